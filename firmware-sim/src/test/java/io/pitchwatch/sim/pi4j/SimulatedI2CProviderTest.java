package io.pitchwatch.sim.pi4j;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.exception.Pi4JException;
import com.pi4j.io.i2c.I2C;
import com.pi4j.io.i2c.I2CProvider;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;
import java.util.function.LongConsumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SimulatedI2CProviderTest {

  private static final long SECOND = 1_000_000_000L;

  @TempDir private Path folder;
  private Context context = Pi4J.newContextBuilder().build();

  @AfterEach
  void close() {
    context.shutdown();
  }

  private I2C open(String scenario) throws IOException {
    Path file = Files.writeString(folder.resolve("scenario.toml"), scenario);
    return open(file);
  }

  private I2C open(Path scenario) {
    context.shutdown();
    context =
        Pi4J.newContextBuilder()
            .autoDetectProviders()
            .property(SimulationPlugin.SCENARIO, scenario.toString())
            .build();
    I2CProvider provider = context.provider(SimulatedI2CProvider.ID);
    return provider.create(I2C.newConfigBuilder(context).id("chip").bus(1).device(0x53).build());
  }

  private LongConsumer clock() {
    return context.<SimulatedI2CProvider>provider(SimulatedI2CProvider.ID);
  }

  private String ask(String question) {
    Function<String, String> provider =
        context.<SimulatedI2CProvider>provider(SimulatedI2CProvider.ID);
    return provider.apply(question);
  }

  @Test
  void keepsStillWithoutAScenario() {
    context.shutdown();
    context = Pi4J.newContextBuilder().autoDetectProviders().build();
    assertFalse(context.hasProvider(SimulatedI2CProvider.ID));
  }

  @Test
  void leadsToTheChipsRegisters() throws IOException {
    I2C chip =
        open(
            "[body]\nroll-arm = \"0 m\"\n[site]\nroll = \"3 deg\"\n[sensor]\nnoise = \"0 ug/rtHz\"\n");
    assertEquals(0xE5, chip.readRegister(0x00));
    clock().accept(SECOND);
    chip.writeRegister(0x31, (byte) 0x08);
    chip.writeRegister(0x2D, (byte) 0x08);
    clock().accept(2 * SECOND);
    byte[] data = new byte[6];
    assertEquals(6, chip.readRegister(0x32, data, 0, 6));
    assertEquals(Math.round(256 * Math.sin(Math.toRadians(3))), data[2]);
    chip.write((byte) 0x2C);
    assertEquals(0x0A, chip.read(), "a plain read begins where the pointer was left");
  }

  @Test
  void failsAsTheKernelsBusFails() throws IOException {
    I2C chip =
        open(
            """
            [[event]]
            at = "1 s"
            does = "bus-fault"
            lasts = "1 s"
            [[event]]
            at = "3 s"
            does = "stuck"
            lasts = "1 s"
            """);
    clock().accept(SECOND);
    Pi4JException silent = assertThrows(Pi4JException.class, () -> chip.readRegister(0));
    assertEquals("Remote I/O error", innermost(silent).getMessage());
    clock().accept(2 * SECOND);
    assertEquals(0xE5, chip.readRegister(0), "the same object recovers");
    clock().accept(3 * SECOND);
    Pi4JException stuck =
        assertThrows(Pi4JException.class, () -> chip.writeRegister(0x2D, (byte) 8));
    assertInstanceOf(IOException.class, innermost(stuck));
  }

  @Test
  void nobodyAnswersAtAnotherAddress() throws IOException {
    open("seed = 1\n");
    I2CProvider provider = context.provider(SimulatedI2CProvider.ID);
    I2C nobody =
        provider.create(I2C.newConfigBuilder(context).id("nobody").bus(1).device(0x1D).build());
    assertThrows(Pi4JException.class, () -> nobody.readRegister(0));
  }

  @Test
  void refusesAScenarioThatIsWrongAndSaysWhere() {
    Pi4JException refused =
        assertThrows(Pi4JException.class, () -> open("[site]\nrol = \"3 deg\"\n"));
    String all = refused + " " + innermost(refused);
    assertTrue(all.contains("site.rol"), all);
    assertTrue(all.contains("did you mean roll"), all);
  }

  @Test
  void tellsTheTruthAndWhatIsDue() throws IOException {
    open(
        """
        seed = 5
        name = "test"
        [body]
        roll-arm = "0 m"
        [site]
        surface = "concrete"
        roll = "2.1 deg"
        pitch = "-0.8 deg"
        [[event]]
        at = "1 min"
        does = "broker-down"
        lasts = "10 min"
        """);
    clock().accept(59 * SECOND);
    assertEquals("", ask("due"));
    assertEquals("roll=2.1000 pitch=-0.8000 temperature=18.00 under-way=false", ask("truth"));
    clock().accept(60 * SECOND);
    assertEquals("at=60.000 does=broker-down lasts=600.000", ask("due"));
    assertEquals("", ask("due"));
    assertEquals("seed=5 run=3600.000 name=test", ask("scenario"));
    assertTrue(ask("nonsense").startsWith("error"));
    assertThrows(IllegalArgumentException.class, () -> clock().accept(SECOND));
  }

  @Test
  void playsTheArrivalOfHeron() {
    I2C chip = open(Path.of("arrival"));
    assertEquals(0xE5, chip.readRegister(0x00));
    clock().accept(60 * SECOND);
    assertTrue(ask("truth").matches("roll=2\\.[01].* pitch=-0\\.[78].*false"), ask("truth"));
  }

  private static Throwable innermost(Throwable thrown) {
    Throwable cause = thrown;
    while (cause.getCause() != null) {
      cause = cause.getCause();
    }
    return cause;
  }
}
