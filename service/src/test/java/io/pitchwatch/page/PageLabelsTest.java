package io.pitchwatch.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** All words of the page are in one file, and each is listed with where it comes from. */
class PageLabelsTest {

  private static final Path PAGE = Path.of("src/main/resources/io/pitchwatch/page");
  private static final Path LIST = Path.of("../docs/page.md");

  /** A string or template that is a value, not a key. */
  private static final Pattern LITERAL = Pattern.compile("(?:\"([^\"\\n]*)\"(?!\\s*:)|`([^`]*)`)");

  @Test
  void everyLabelIsListedWithItsOrigin() throws IOException {
    String list = Files.readString(LIST);
    List<String> missing = new ArrayList<>();
    List<String> labels = labels();
    assertTrue(labels.size() > 150, "found only " + labels.size() + " labels");
    for (String label : labels) {
      if (!list.contains(label)) {
        missing.add(label);
      }
    }
    assertEquals(List.of(), missing, "not in " + LIST);
  }

  /** A word between two tags, outside noscript, would escape translation. */
  @Test
  void markupHoldsNoWordsOfItsOwn() throws IOException {
    String page =
        Files.readString(PAGE.resolve("index.html"))
            .replaceAll("(?s)<noscript>.*?</noscript>|<title>.*?</title>", "");
    Matcher words = Pattern.compile(">([^<]*[a-z][^<]*)<").matcher(page);
    assertTrue(!words.find(), () -> "\"" + words.group(1) + "\"");
  }

  private static List<String> labels() throws IOException {
    String source = Files.readString(PAGE.resolve("text.js"));
    String joined =
        source
            .substring(source.indexOf("export const text"))
            .replaceAll("\"\\s*\\+\\s*\"", "")
            .replaceAll("(?m)^\\s*//.*$", "");
    Matcher literal = LITERAL.matcher(joined);
    List<String> found = new ArrayList<>();
    while (literal.find()) {
      String text = literal.group(1) != null ? literal.group(1) : literal.group(2);
      String shown = text.replaceAll("\\$\\{[^}]*}", "…");
      if (shown.matches("(?s).*[A-Za-z].*")) {
        found.add(shown);
      }
    }
    return found;
  }
}
