package io.pitchwatch.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.GZIPOutputStream;

/** One file of the page, held as it goes over the wire: as it is, and compressed once. */
final class StaticFile {

  private static final int DIGEST_BYTES = 12;

  private final String type;
  private final byte[] plain;
  private final byte[] gzip;
  private final String digest;

  StaticFile(String type, byte[] content) {
    this.type = type;
    plain = content.clone();
    gzip = compressed(content);
    digest = digest(content);
  }

  String type() {
    return type;
  }

  /** The bytes to send; compressed where the reader takes that and it is shorter. */
  byte[] body(boolean gzipAccepted) {
    return isCompressed(gzipAccepted) ? gzip : plain;
  }

  boolean isCompressed(boolean gzipAccepted) {
    return gzipAccepted && gzip.length < plain.length;
  }

  /** A strong validator, different for the two encodings (RFC 9110, section 8.8.3.3). */
  String entityTag(boolean gzipAccepted) {
    return isCompressed(gzipAccepted) ? '"' + digest + "-gzip\"" : '"' + digest + '"';
  }

  private static byte[] compressed(byte[] content) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
      out.write(content);
    } catch (IOException e) {
      throw new UncheckedIOException("compressing in memory failed", e);
    }
    return bytes.toByteArray();
  }

  private static String digest(byte[] content) {
    try {
      byte[] sha = MessageDigest.getInstance("SHA-256").digest(content);
      return HexFormat.of().formatHex(sha, 0, DIGEST_BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
