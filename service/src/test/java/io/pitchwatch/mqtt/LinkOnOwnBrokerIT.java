package io.pitchwatch.mqtt;

import java.nio.file.Path;
import org.junit.jupiter.api.Nested;

/** The link on the built-in broker. */
class LinkOnOwnBrokerIT {

  @Nested
  class Says extends LinkSays {
    @Override
    BrokerProcess broker(Path place) {
      return new OwnBrokerProcess(place);
    }
  }

  @Nested
  class Takes extends LinkTakes {
    @Override
    BrokerProcess broker(Path place) {
      return new OwnBrokerProcess(place);
    }
  }

  @Nested
  class Outlives extends LinkOutlives {
    @Override
    BrokerProcess broker(Path place) {
      return new OwnBrokerProcess(place);
    }
  }
}
