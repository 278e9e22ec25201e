package io.pitchwatch.command;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.config.Config;
import io.pitchwatch.mqtt.tree.HistoryRequest;
import io.pitchwatch.mqtt.tree.HistoryRequest.Step;
import io.pitchwatch.store.HistoryArchive;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How the floor leaned over hours to years. */
@Command(
    name = "history",
    mixinStandardHelpOptions = true,
    description = {
      "Shows how the floor leaned over hours to years, from a service's store.",
      "The service may be running: the store is only read."
    },
    footer = {
      "",
      "Angles are degrees, times RFC 3339 UTC; what is not known is empty (null in",
      "JSON), and so is a row in the place of every gap. Without --csv or --json: a",
      "table for people.",
      "Exit codes: 0 shown, also when there is nothing in that time; 2 no store, or",
      "it cannot be read."
    })
final class HistoryCommand implements Callable<Integer> {

  private static final double DEFAULT_HOURS = 24;

  @Spec CommandSpec spec;

  @Mixin StoreOption store;

  @Option(
      names = "--from",
      paramLabel = "TIME",
      description = "Only from this instant on (default: 24 hours before --to).")
  Optional<Instant> from = Optional.empty();

  @Option(
      names = "--to",
      paramLabel = "TIME",
      description = "Only before this instant (default: the end).")
  Optional<Instant> to = Optional.empty();

  @Option(
      names = "--step",
      paramLabel = "STEP",
      description = "minute, hour or day (default: the finest that is short enough to read).")
  Optional<Step> step = Optional.empty();

  @Option(names = "--csv", description = "Print comma-separated values.")
  boolean csv;

  @Option(names = "--json", description = "Print one JSON document (docs/schemas/history.json).")
  boolean json;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Optional<StoreOption.Place> place = store.place("history", err);
    if (place.isEmpty()) {
      return ExitCode.NOT_KNOWN;
    }
    HistoryArchive.Opening opening = HistoryArchive.open(place.get().directory());
    if (opening instanceof HistoryArchive.Opening.Refused refused) {
      err.println("history: " + refused.why());
      return ExitCode.NOT_KNOWN;
    }
    try (HistoryArchive archive = ((HistoryArchive.Opening.Opened) opening).archive()) {
      return show(archive, place.get().config().map(Config::coach));
    }
  }

  private int show(HistoryArchive archive, Optional<Coach> coach) {
    PrintWriter out = spec.commandLine().getOut();
    Instant now = Instant.now();
    HistoryPage page = HistoryPage.read(archive, wanted(archive, now));
    if (json) {
      byte[] document =
          HistoryDocument.of(page, new HistoryDocument.About(coach, now, Optional.empty()));
      out.println(new String(document, StandardCharsets.UTF_8));
    } else if (csv) {
      HistoryText.csv(page, out);
    } else {
      HistoryText.table(page, out);
    }
    out.flush();
    page.trouble().ifPresent(spec.commandLine().getErr()::println);
    return page.trouble().isPresent() ? ExitCode.NOT_KNOWN : ExitCode.GOOD;
  }

  /** A day before the last row, whatever the clock of this machine says; a file has no limit. */
  private HistoryPage.Wanted wanted(HistoryArchive archive, Instant now) {
    HistoryRequest request = new HistoryRequest(step, DEFAULT_HOURS, from, to, Optional.empty());
    Instant end = to.or(archive::lastLabel).orElse(now);
    HistoryPage.Wanted asked = HistoryPage.wanted(request, end.plusSeconds(1));
    return new HistoryPage.Wanted(
        asked.resolution(),
        asked.fromSeconds(),
        asked.toSeconds(),
        Integer.MAX_VALUE,
        Integer.MAX_VALUE);
  }
}
