package io.pitchwatch.mqtt;

import java.nio.file.Path;

/** The link on Debian's Mosquitto. */
class LinkOnMosquittoIT extends LinkContract {

  @Override
  BrokerProcess broker(Path directory) {
    return new Mosquitto(directory);
  }
}
