package io.pitchwatch.mqtt;

import java.nio.file.Path;

/** The link on the built-in broker. */
class LinkOnOwnBrokerIT extends LinkContract {

  @Override
  BrokerProcess broker(Path directory) {
    return new OwnBrokerProcess(directory);
  }
}
