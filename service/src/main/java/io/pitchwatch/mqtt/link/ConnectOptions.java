package io.pitchwatch.mqtt.link;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManagerFactory;
import org.eclipse.paho.mqttv5.client.MqttConnectionOptions;
import org.eclipse.paho.mqttv5.common.MqttMessage;

/** Turns a plan into Paho's options. */
final class ConnectOptions {

  /** Longest wait for the network and for the broker's greeting, seconds. */
  static final int TIMEOUT_S = 5;

  /**
   * Largest message the broker may send us, bytes. What is larger it keeps to itself (MQTT 5.0,
   * 3.1.2.11.4): nobody may fill our memory with one message.
   */
  static final long LARGEST_PACKET = 256 * 1024;

  private static final long LONGEST_PASSWORD_FILE = 4096;

  private ConnectOptions() {}

  /**
   * The options.
   *
   * @throws IOException if the password or the certificates cannot be read
   */
  static MqttConnectionOptions of(SessionPlan plan) throws IOException {
    MqttConnectionOptions options = new MqttConnectionOptions();
    options.setAutomaticReconnect(false);
    options.setConnectionTimeout(TIMEOUT_S);
    options.setKeepAliveInterval((int) plan.keepAlive().toSeconds());
    // Nothing is left behind on the broker: commands given while we are away must not be run
    // when we come back, and all values are said anew.
    options.setCleanStart(true);
    options.setSessionExpiryInterval(0L);
    options.setMaximumPacketSize(LARGEST_PACKET);
    if (plan.will().isPresent()) {
      Publication will = plan.will().get();
      MqttMessage message =
          new MqttMessage(will.payload().bytes(), will.qos(), will.retained(), null);
      options.setWill(will.topic().text(), message);
    }
    if (plan.credentials().isPresent()) {
      options.setUserName(plan.credentials().get().user());
      options.setPassword(password(plan.credentials().get().passwordFile()));
    }
    if (plan.broker().tls() && plan.caFile().isPresent()) {
      options.setSocketFactory(trusting(plan.caFile().get()));
    }
    return options;
  }

  private static byte[] password(Path file) throws IOException {
    if (Files.size(file) > LONGEST_PASSWORD_FILE) {
      throw new IOException(file + " is larger than " + LONGEST_PASSWORD_FILE + " bytes");
    }
    String firstLine = Files.readString(file).lines().findFirst().orElse("");
    if (firstLine.isEmpty()) {
      throw new IOException(file + " holds no password on its first line");
    }
    return firstLine.getBytes(StandardCharsets.UTF_8);
  }

  private static SSLSocketFactory trusting(Path caFile) throws IOException {
    try (InputStream pem = Files.newInputStream(caFile)) {
      KeyStore trusted = KeyStore.getInstance(KeyStore.getDefaultType());
      trusted.load(null, null);
      int count = 0;
      for (Certificate each : CertificateFactory.getInstance("X.509").generateCertificates(pem)) {
        trusted.setCertificateEntry("ca-" + count++, each);
      }
      TrustManagerFactory trust =
          TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
      trust.init(trusted);
      SSLContext context = SSLContext.getInstance("TLS");
      context.init(null, trust.getTrustManagers(), null);
      return context.getSocketFactory();
    } catch (GeneralSecurityException e) {
      throw new IOException(caFile + " holds no usable certificates: " + e.getMessage(), e);
    }
  }
}
