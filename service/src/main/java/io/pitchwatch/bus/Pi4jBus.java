package io.pitchwatch.bus;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.extension.Plugin;
import com.pi4j.extension.PluginService;
import com.pi4j.io.i2c.I2CProvider;
import com.pi4j.platform.Platform;
import com.pi4j.provider.Provider;
import io.pitchwatch.sensing.RegisterBus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import org.jspecify.annotations.Nullable;

/**
 * The I2C buses of this machine, through one provider of Pi4J.
 *
 * <p>Pi4J keeps only the provider of highest priority for each kind of input and output when it
 * detects them itself; here both the kernel's buses and simulated ones may be present, so plugins
 * are asked one by one until the wanted provider turns up. Nothing else is initialised.
 *
 * <p>Opening never fails: where Pi4J, its native code or the bus is missing, each transaction says
 * so. Used by one thread at a time.
 */
public final class Pi4jBus implements AutoCloseable {

  /** The buses of the Linux kernel, {@code /dev/i2c-N}. */
  public static final String LINUX = "linuxfs-i2c";

  private final String providerId;
  private final Context context;
  private final List<Plugin> plugins = new ArrayList<>();
  private final @Nullable I2CProvider provider;
  private final String missing;

  private Pi4jBus(String providerId, Map<String, String> properties) {
    this.providerId = providerId;
    this.context =
        Pi4J.newContextBuilder()
            .noAutoDetect()
            .noAutoInject()
            .disableShutdownHook()
            .properties(properties)
            .build();
    List<String> known = new ArrayList<>();
    this.provider = find(known);
    this.missing = "no plugin of Pi4J offers " + providerId + "; those here offer " + known;
  }

  /**
   * Opens the buses that a provider offers.
   *
   * @param providerId {@link #LINUX}, or the id of another provider on the class path
   * @param properties handed to the provider through Pi4J's context
   */
  public static Pi4jBus open(String providerId, Map<String, String> properties) {
    return new Pi4jBus(providerId, properties);
  }

  private @Nullable I2CProvider find(List<String> known) {
    Offers offers = new Offers(context);
    for (Plugin plugin : ServiceLoader.load(Plugin.class)) {
      plugins.add(plugin);
      plugin.initialize(offers);
      for (Provider<?, ?, ?> offered : offers.take()) {
        if (offered instanceof I2CProvider i2c) {
          known.add(i2c.id());
          if (i2c.id().equals(providerId)) {
            i2c.initialize(context);
            return i2c;
          }
        }
      }
    }
    return null;
  }

  /**
   * One chip.
   *
   * @param bus number of the bus, 0 or more
   * @param address of the chip, 0x03 to 0x77
   * @throws IllegalArgumentException if either is out of range
   */
  public RegisterBus at(int bus, int address) {
    if (bus < 0) {
      throw new IllegalArgumentException("bus is " + bus + "; it must be 0 or more");
    }
    if (address < 0x03 || address > 0x77) {
      throw new IllegalArgumentException(
          String.format("address is 0x%02X; it must be 0x03 to 0x77", address));
    }
    return new Pi4jRegisters(this, bus, address);
  }

  /**
   * The provider, if it has a further face, as a simulated one has for its clock.
   *
   * @param type the face
   */
  public <T> Optional<T> face(Class<T> type) {
    return type.isInstance(provider) ? Optional.of(type.cast(provider)) : Optional.empty();
  }

  Context context() {
    return context;
  }

  @Nullable I2CProvider provider() {
    return provider;
  }

  /** Why there is no provider. */
  String missing() {
    return missing;
  }

  /** Whether the buses are those of the kernel. */
  boolean linux() {
    return providerId.equals(LINUX);
  }

  /** Lets go of the device files, so that a bus that went away and came back is opened anew. */
  void reopen() {
    if (provider != null && linux()) {
      provider.shutdown(context);
    }
  }

  /** Closes all; the chips keep their settings. */
  @Override
  public void close() {
    if (provider != null) {
      provider.shutdown(context);
    }
    for (Plugin plugin : plugins) {
      plugin.shutdown(context);
    }
    context.shutdown();
  }

  /** Collects what a plugin registers. */
  private static final class Offers implements PluginService {

    private final Context context;
    private final List<Provider<?, ?, ?>> providers = new ArrayList<>();

    Offers(Context context) {
      this.context = context;
    }

    List<Provider<?, ?, ?>> take() {
      List<Provider<?, ?, ?>> taken = List.copyOf(providers);
      providers.clear();
      return taken;
    }

    @Override
    public Context context() {
      return context;
    }

    @Override
    @SuppressWarnings("rawtypes") // as the interface has it
    public PluginService register(Provider... offered) {
      for (Provider<?, ?, ?> one : offered) {
        providers.add(one);
      }
      return this;
    }

    @Override
    public PluginService register(Platform... ignored) {
      return this;
    }
  }
}
