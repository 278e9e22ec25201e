package io.pitchwatch.mqtt;

import java.nio.file.Path;
import org.junit.jupiter.api.Nested;

/** The link on Debian's Mosquitto. */
class LinkOnMosquittoIT {

  @Nested
  class Says extends LinkSays {
    @Override
    BrokerProcess broker(Path place) {
      return new Mosquitto(place);
    }
  }

  @Nested
  class Takes extends LinkTakes {
    @Override
    BrokerProcess broker(Path place) {
      return new Mosquitto(place);
    }
  }

  @Nested
  class Outlives extends LinkOutlives {
    @Override
    BrokerProcess broker(Path place) {
      return new Mosquitto(place);
    }
  }
}
