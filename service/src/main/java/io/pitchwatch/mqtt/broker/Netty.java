package io.pitchwatch.mqtt.broker;

/**
 * Keeps Netty small, which by itself reserves memory for thousands of connections. It reads these
 * once, when its first class is loaded; what the owner set stays.
 */
final class Netty {

  private Netty() {}

  static void beSmall() {
    setDefault("io.netty.allocator.numHeapArenas", "1");
    setDefault("io.netty.allocator.numDirectArenas", "1");
    setDefault("io.netty.allocator.pageSize", "4096");
    setDefault("io.netty.allocator.maxOrder", "5");
    setDefault("io.netty.recycler.maxCapacityPerThread", "0");
  }

  private static void setDefault(String name, String value) {
    if (System.getProperty(name) == null) {
      System.setProperty(name, value);
    }
  }
}
