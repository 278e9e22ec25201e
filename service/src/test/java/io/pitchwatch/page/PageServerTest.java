package io.pitchwatch.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageServerTest {

  private static final Path RESOURCES = Path.of("src/main/resources/io/pitchwatch/page");
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private static PageServer server;

  @BeforeAll
  static void serve() {
    server = started(settings(0));
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @Test
  void portNoughtIsAnyFreePortOnLoopback() {
    assertEquals("127.0.0.1", server.address().getHost());
    assertTrue(server.address().getPort() > 0);
  }

  @Test
  void servesThePageWithItsType() throws Exception {
    HttpResponse<byte[]> page = get("/");
    assertEquals(200, page.statusCode());
    assertEquals("text/html; charset=utf-8", header(page, "Content-Type"));
    assertArrayEquals(Files.readAllBytes(RESOURCES.resolve("index.html")), page.body());
  }

  /** Home screens take no SVG. */
  @Test
  void homeScreensFindPicturesOfTheSizesThatAreNamed() throws Exception {
    String named =
        new String(get("/").body(), StandardCharsets.UTF_8)
            + new String(get("/manifest.webmanifest").body(), StandardCharsets.UTF_8);
    Matcher picture = Pattern.compile("icon-(\\d+)\\.png\",? .*?(\\d+)x(\\d+)").matcher(named);
    List<Integer> sizes = new ArrayList<>();
    while (picture.find()) {
      HttpResponse<byte[]> answer = get("/icon-" + picture.group(1) + ".png");
      assertEquals("image/png", header(answer, "Content-Type"));
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(answer.body()));
      assertEquals(picture.group(2), String.valueOf(image.getWidth()));
      assertEquals(picture.group(3), String.valueOf(image.getHeight()));
      sizes.add(image.getWidth());
    }
    assertEquals(List.of(180, 192, 512), sizes);
  }

  @Test
  void servesEveryFileOfThePageAndNamesNoOther() throws Exception {
    try (Stream<Path> files = Files.list(RESOURCES)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        HttpResponse<byte[]> answer = get("/" + file.getFileName());
        assertEquals(200, answer.statusCode(), file.toString());
        assertArrayEquals(Files.readAllBytes(file), answer.body(), file.toString());
      }
    }
  }

  /** Whatever the page loads is here: no other host, nothing missing. */
  @Test
  void everythingThePageLoadsIsServedHere() throws Exception {
    Pattern loads =
        Pattern.compile("(?:src|href)=\"([^\"#]+)\"|(?:from|import) \"([^\"]+)\"|url\\(([^)]+)\\)");
    try (Stream<Path> files = Files.list(RESOURCES)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        Matcher found = loads.matcher(Files.readString(file, StandardCharsets.ISO_8859_1));
        while (found.find()) {
          String target =
              Stream.of(1, 2, 3).map(found::group).filter(g -> g != null).findFirst().get();
          if (!target.startsWith("#")) {
            URI at = server.address().resolve(target);
            assertEquals(server.address().getAuthority(), at.getAuthority(), file + ": " + target);
            assertEquals(200, get(at.getPath()).statusCode(), file + ": " + target);
          }
        }
      }
    }
  }

  @Test
  void everyAnswerCarriesTheSafetyHeaders() throws Exception {
    for (String path : List.of("/", "/app.js", "/settings.json", "/nothing-here")) {
      HttpResponse<byte[]> answer = get(path);
      String policy = header(answer, "Content-Security-Policy");
      assertTrue(policy.contains("default-src 'self'"), policy);
      assertTrue(policy.contains("connect-src 'self' ws: wss:"), policy);
      assertTrue(policy.contains("frame-ancestors 'none'"), policy);
      assertFalse(policy.contains("unsafe"), policy);
      assertEquals("nosniff", header(answer, "X-Content-Type-Options"));
      assertEquals("no-referrer", header(answer, "Referrer-Policy"));
    }
  }

  @Test
  void markupHoldsNoInlineScriptOrStyle() throws Exception {
    String page = Files.readString(RESOURCES.resolve("index.html"));
    assertFalse(Pattern.compile("<script(?![^>]*\\bsrc=)").matcher(page).find());
    assertFalse(Pattern.compile("<style|\\sstyle=|\\son[a-z]+=").matcher(page).find());
  }

  @Test
  void compressesForThoseWhoTakeIt() throws Exception {
    HttpResponse<byte[]> plain = get("/app.js");
    HttpResponse<byte[]> packed = get("/app.js", "Accept-Encoding", "br, gzip;q=0.8");
    assertEquals("gzip", header(packed, "Content-Encoding"));
    assertTrue(packed.body().length < plain.body().length);
    assertArrayEquals(
        plain.body(), new GZIPInputStream(new ByteArrayInputStream(packed.body())).readAllBytes());
    assertEquals("Accept-Encoding", header(packed, "Vary"));
    assertNotEquals(header(plain, "ETag"), header(packed, "ETag"));
    HttpResponse<byte[]> unwanted = get("/app.js", "Accept-Encoding", "gzip;q=0");
    assertTrue(unwanted.headers().firstValue("Content-Encoding").isEmpty());
  }

  @Test
  void unchangedFilesAreNotSentAgain() throws Exception {
    String tag = header(get("/style.css"), "ETag");
    for (String held : List.of(tag, "W/" + tag, "\"other\", " + tag, "*")) {
      HttpResponse<byte[]> again = get("/style.css", "If-None-Match", held);
      assertEquals(304, again.statusCode(), held);
      assertEquals(0, again.body().length);
    }
    assertEquals(200, get("/style.css", "If-None-Match", "\"other\"").statusCode());
  }

  @Test
  void headAnswersWithTheLengthAlone() throws Exception {
    HttpResponse<byte[]> head = send("HEAD", "/app.js");
    assertEquals(200, head.statusCode());
    assertEquals(0, head.body().length);
    assertEquals(Long.toString(get("/app.js").body().length), header(head, "Content-Length"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"POST", "PUT", "DELETE", "OPTIONS", "PATCH"})
  void otherMethodsAreRefused(String method) throws Exception {
    HttpResponse<byte[]> answer = send(method, "/");
    assertEquals(405, answer.statusCode());
    assertEquals("GET, HEAD", header(answer, "Allow"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../PageServer.class",
        "/..%2f..%2fPageServer.class",
        "/%2e%2e/%2e%2e/etc/passwd",
        "/..\\..\\windows\\win.ini",
        "//etc/passwd",
        "/./index.html/../../pom.xml",
        "/META-INF/MANIFEST.MF",
        "/index.html%00.js",
        "/io/pitchwatch/page/PageServer.class"
      })
  void nothingButThePageCanBeReached(String path) throws Exception {
    String answer = raw("GET " + path + " HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");
    assertTrue(
        answer.startsWith("HTTP/1.1 404") || answer.startsWith("HTTP/1.1 400"),
        path + "\n" + answer);
  }

  @Test
  void settingsSayWhereTheTreeIsAndWhatTheCoachIsLike() throws Exception {
    HttpResponse<byte[]> answer = get("/settings.json");
    assertEquals("application/json; charset=utf-8", header(answer, "Content-Type"));
    String json = new String(answer.body(), StandardCharsets.UTF_8);
    wellFormed(json);
    for (String part :
        List.of(
            "\"coach\":\"heron\"",
            "\"tree\":\"homie\"",
            "\"broker\":{\"port\":1883,\"path\":\"/mqtt\"}",
            "\"trackMm\":1960.0",
            "\"season\":0.25",
            "\"sideToSideDeg\":3.0",
            "\"faces\":\"coach\"",
            "\"id\":\"grey-sheet\",\"kind\":\"sheet\",\"thicknessMm\":12.0")) {
      assertTrue(json.contains(part), part + " in " + json);
    }
  }

  @Test
  void brokerElsewhereIsNamedByItsAddress() throws Exception {
    PageSettings settings =
        new PageSettings(
            PageSettings.LOOPBACK,
            0,
            Herons.heron(),
            "homie",
            new BrokerAddress.At(URI.create("wss://broker.example/mqtt")),
            false);
    String json = new String(SettingsDocument.of(settings), StandardCharsets.UTF_8);
    assertTrue(json.contains("\"broker\":{\"url\":\"wss://broker.example/mqtt\"}"), json);
    assertTrue(json.contains("\"signIn\":false"), json);
  }

  @Test
  void takenPortIsRefusedInOneSentenceThatNamesIt() {
    int port = server.address().getPort();
    PageStart.Refused refused =
        assertInstanceOf(PageStart.Refused.class, PageServer.start(settings(port)));
    assertTrue(refused.reason().contains("127.0.0.1 port " + port), refused.reason());
    assertTrue(refused.reason().contains("another program"), refused.reason());
  }

  @Test
  void strangeAddressIsRefused() {
    PageSettings elsewhere =
        new PageSettings(
            "192.0.2.1", 0, Herons.heron(), "homie", new BrokerAddress.SameHost(1883), true);
    PageStart.Refused refused =
        assertInstanceOf(PageStart.Refused.class, PageServer.start(elsewhere));
    assertTrue(refused.reason().contains("192.0.2.1"), refused.reason());
  }

  @Test
  void closedServerAnswersNobodyAndFreesItsPort() throws Exception {
    PageServer first = started(settings(0));
    int port = first.address().getPort();
    first.close();
    assertThrows(
        ConnectException.class, () -> new Socket(InetAddress.getLoopbackAddress(), port).close());
    started(settings(port)).close();
  }

  /** Readers that send half a request hold threads; there are still some for the others. */
  @Test
  void aFewReadersThatNeverFinishDoNotStopTheOthers() throws Exception {
    List<Socket> stuck = new ArrayList<>();
    try {
      for (int i = 0; i < 5; i++) {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.address().getPort());
        stuck.add(socket);
        socket
            .getOutputStream()
            .write("GET / HTTP/1.1\r\nHost".getBytes(StandardCharsets.US_ASCII));
        socket.getOutputStream().flush();
      }
      assertEquals(200, get("/").statusCode());
    } finally {
      for (Socket socket : stuck) {
        socket.close();
      }
    }
  }

  @Test
  void wrongSettingsAreNamed() {
    assertThrows(IllegalArgumentException.class, () -> settings(65536));
    assertThrows(IllegalArgumentException.class, () -> settings(-1));
    assertThrows(IllegalArgumentException.class, () -> new BrokerAddress.SameHost(0));
    assertThrows(
        IllegalArgumentException.class,
        () -> new BrokerAddress.At(URI.create("http://broker.example/")));
    assertThrows(
        IllegalArgumentException.class,
        () -> new BrokerAddress.At(URI.create("ws://user:word@broker.example/")));
  }

  private static PageSettings settings(int port) {
    return new PageSettings(
        PageSettings.LOOPBACK,
        port,
        Herons.heron(),
        "homie",
        new BrokerAddress.SameHost(1883),
        true);
  }

  private static PageServer started(PageSettings settings) {
    return assertInstanceOf(PageStart.Started.class, PageServer.start(settings)).server();
  }

  private static HttpResponse<byte[]> get(String path, String... headers) throws Exception {
    HttpRequest.Builder request = HttpRequest.newBuilder(server.address().resolve(path));
    if (headers.length > 0) {
      request.headers(headers);
    }
    return CLIENT.send(
        request.timeout(Duration.ofSeconds(5)).build(), HttpResponse.BodyHandlers.ofByteArray());
  }

  private static HttpResponse<byte[]> send(String method, String path) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(server.address().resolve(path))
            .method(method, HttpRequest.BodyPublishers.noBody())
            .timeout(Duration.ofSeconds(5))
            .build();
    return CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray());
  }

  /** One request as bytes, for paths that a client library would tidy up. */
  private static String raw(String request) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.address().getPort())) {
      socket.setSoTimeout(5000);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
    }
  }

  private static String header(HttpResponse<?> answer, String name) {
    return answer.headers().firstValue(name).orElseThrow(() -> new AssertionError("no " + name));
  }

  private static void wellFormed(String json) throws IOException {
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      assertEquals(JsonToken.START_OBJECT, parser.nextToken());
      parser.skipChildren();
      assertEquals(null, parser.nextToken());
    }
  }
}
