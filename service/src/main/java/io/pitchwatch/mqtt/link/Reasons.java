package io.pitchwatch.mqtt.link;

import java.io.EOFException;
import java.net.UnknownHostException;
import javax.net.ssl.SSLException;
import org.eclipse.paho.mqttv5.client.MqttClientException;
import org.eclipse.paho.mqttv5.client.MqttDisconnectResponse;
import org.eclipse.paho.mqttv5.common.MqttException;
import org.eclipse.paho.mqttv5.common.packet.MqttReturnCode;

/** Says in words why a connection did not come about or ended. */
final class Reasons {

  private final SessionPlan plan;

  Reasons(SessionPlan plan) {
    this.plan = plan;
  }

  Standing.Ended ofRefusal(Throwable thrown) {
    int code = thrown instanceof MqttException e ? e.getReasonCode() : 0;
    return switch (code) {
      case MqttReturnCode.RETURN_CODE_BAD_USERNAME_OR_PASSWORD,
          MqttReturnCode.RETURN_CODE_NOT_AUTHORIZED,
          MqttReturnCode.RETURN_CODE_BAD_AUTHENTICATION,
          MqttReturnCode.RETURN_CODE_BANNED ->
          new Standing.Unwelcome(
              "the broker at " + plan.broker() + " turns us down: " + identity());
      case MqttReturnCode.RETURN_CODE_UNSUPPORTED_PROTOCOL_VERSION ->
          unreachable("speaks no MQTT 5, which is needed");
      case MqttClientException.REASON_CODE_CLIENT_TIMEOUT -> unreachable("does not answer");
      default -> unreachable("cannot be reached: " + cause(thrown));
    };
  }

  Standing.Ended ofEnd(MqttDisconnectResponse response) {
    if (response.getReturnCode() == MqttReturnCode.RETURN_CODE_SESSION_TAKEN_OVER) {
      return new Standing.TakenOver(plan.contested());
    }
    MqttException thrown = response.getException();
    if (thrown != null && thrown.getReasonCode() == MqttReturnCode.RETURN_CODE_NOT_AUTHORIZED) {
      // Paho gives up the whole connection when one message of quality of service 2 is denied.
      return new Standing.Unwelcome(
          "the broker at "
              + plan.broker()
              + " does not let us publish; check the rights of "
              + who());
    }
    String why =
        thrown == null ? "the broker ended it, reason " + response.getReturnCode() : cause(thrown);
    boolean closed = thrown != null && thrown.getCause() instanceof EOFException;
    return new Standing.Lost(
        "connection to the broker at " + plan.broker() + " lost: " + why, closed);
  }

  Standing.Ended noAnswer() {
    return unreachable("does not answer within " + ConnectOptions.TIMEOUT_S + " s");
  }

  private Standing.Unreachable unreachable(String why) {
    return new Standing.Unreachable("the broker at " + plan.broker() + " " + why);
  }

  private String identity() {
    return plan.credentials()
        .map(c -> "check user " + c.user() + " and the password in " + c.passwordFile())
        .orElse("it asks for a user and a password, and none are configured");
  }

  private String who() {
    return plan.credentials().map(c -> "user " + c.user()).orElse("clients without a user");
  }

  private static String cause(Throwable thrown) {
    Throwable cause = thrown.getCause() == null ? thrown : thrown.getCause();
    if (cause instanceof UnknownHostException) {
      return "its name is not known";
    }
    if (cause instanceof SSLException) {
      return "its certificate is not to be trusted: " + cause.getMessage();
    }
    return cause.getMessage() == null ? "it was closed" : cause.getMessage();
  }
}
