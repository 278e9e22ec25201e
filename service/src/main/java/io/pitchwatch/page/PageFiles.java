package io.pitchwatch.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;

/**
 * The files of the page by the path they are asked for under. Nothing but these can be asked for:
 * no path ever reaches a file system.
 */
final class PageFiles {

  private static final List<String> OWN =
      List.of(
          "app.js",
          "arrange.js",
          "cards.js",
          "care.js",
          "commands.js",
          "connection.js",
          "dom.js",
          "floorcard.js",
          "floorplan.js",
          "history.js",
          "historydoc.js",
          "icon-180.png",
          "icon-192.png",
          "icon-512.png",
          "icon.svg",
          "index.html",
          "lean.js",
          "manifest.webmanifest",
          "model.js",
          "plancard.js",
          "plot.js",
          "setup.js",
          "signin.js",
          "sitecard.js",
          "stack.js",
          "style.css",
          "text.js",
          "togo.js",
          "tree.js",
          "units.js",
          "values.js",
          "wellcard.js",
          "words.js",
          "worker.js");

  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "json", "application/json; charset=utf-8",
          "svg", "image/svg+xml",
          "png", "image/png",
          "webmanifest", "application/manifest+json; charset=utf-8");

  private PageFiles() {}

  /** Every file, by path with its leading slash, {@code settings.json} with the given content. */
  static Map<String, StaticFile> load(byte[] settings) {
    Map<String, StaticFile> files = new HashMap<>();
    for (String name : OWN) {
      files.put("/" + name, read(name, name));
    }
    files.put("/lib/paho-mqtt.js", library("paho-mqtt", "paho-mqtt-min.js"));
    files.put("/lib/uplot.js", library("uplot", "dist/uPlot.iife.min.js"));
    files.put("/lib/uplot.css", library("uplot", "dist/uPlot.min.css"));
    files.put("/settings.json", new StaticFile(typeOf("settings.json"), settings));
    files.put("/", read("index.html", "index.html"));
    return Map.copyOf(files);
  }

  /** A file of a webjar, whose paths carry the version that only the build knows. */
  private static StaticFile library(String artifact, String file) {
    Properties build = new Properties();
    String properties = "/META-INF/maven/org.webjars.npm/" + artifact + "/pom.properties";
    try (InputStream in = open(properties)) {
      build.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException("reading " + properties, e);
    }
    String version = build.getProperty("version");
    return read(file, "/META-INF/resources/webjars/" + artifact + "/" + version + "/" + file);
  }

  private static StaticFile read(String name, String resource) {
    try (InputStream in = open(resource)) {
      return new StaticFile(typeOf(name), in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException("reading " + resource + " from the program's own jar", e);
    }
  }

  private static InputStream open(String resource) {
    InputStream in = PageFiles.class.getResourceAsStream(resource);
    if (in == null) {
      throw new IllegalStateException("the program is incomplete: " + resource + " is missing");
    }
    return in;
  }

  private static String typeOf(String name) {
    String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
    if (type == null) {
      throw new IllegalStateException("no content type for " + name);
    }
    return type;
  }
}
