package io.pitchwatch.command;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.LeanText;
import io.pitchwatch.coach.Words;
import io.pitchwatch.mqtt.tree.SiteDocument;
import io.pitchwatch.store.KeptArchive;
import io.pitchwatch.visit.SiteVisit;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What is remembered of the sites that the coach stood on. */
@Command(
    name = "sites",
    mixinStandardHelpOptions = true,
    description = {
      "Shows how each site leaned, what was planned and laid, how much it sank.",
      "The service may be running: the store is only read."
    },
    footer = {
      "",
      "Sites are known by the names that their owner gave them; no position is kept.",
      "Exit codes: 0 shown, also when there is none; 2 no store, or it cannot be read."
    })
final class SitesCommand implements Callable<Integer> {

  private static final double WORTH_SAYING_RAD = Math.toRadians(0.05);

  @Spec CommandSpec spec;

  @Mixin StoreOption store;

  @Option(
      names = "--json",
      description = "Print one JSON document a line for each site (docs/schemas/book.json).")
  boolean json;

  @Parameters(
      arity = "0..1",
      paramLabel = "NAME",
      description = "Only this site, in any case; otherwise all.")
  Optional<String> name = Optional.empty();

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Optional<StoreOption.Place> place = store.place("sites", err);
    if (place.isEmpty()) {
      return ExitCode.NOT_KNOWN;
    }
    KeptArchive.Opening opening = KeptArchive.read(place.get().directory());
    if (opening instanceof KeptArchive.Opening.Refused refused) {
      err.println("sites: " + refused.why());
      return ExitCode.NOT_KNOWN;
    }
    show(((KeptArchive.Opening.Read) opening).sites().visits());
    return ExitCode.GOOD;
  }

  /** The latest site first, and of each the latest visit first. */
  private void show(List<SiteVisit> visits) {
    Map<String, List<SiteVisit>> sites = new LinkedHashMap<>();
    for (int i = visits.size() - 1; i >= 0; i--) {
      String folded = visits.get(i).site().toLowerCase(Locale.ROOT);
      if (name.isEmpty() || name.get().strip().toLowerCase(Locale.ROOT).equals(folded)) {
        sites.computeIfAbsent(folded, site -> new ArrayList<>()).add(visits.get(i));
      }
    }
    PrintWriter out = spec.commandLine().getOut();
    if (sites.isEmpty() && !json) {
      out.println("Nothing is remembered" + name.map(site -> " of " + site).orElse("") + ".");
    }
    for (List<SiteVisit> site : sites.values()) {
      String called = site.get(0).site();
      out.println(
          json
              ? SiteDocument.write(called, site)
              : (called.isEmpty() ? "Sites without a name" : called)
                  + "\n"
                  + site.stream().map(SitesCommand::text).collect(Collectors.joining("\n")));
    }
    out.flush();
  }

  private static String text(SiteVisit visit) {
    StringBuilder text = new StringBuilder();
    text.append("  ").append(date(visit.begunWallSeconds())).append(" to ");
    text.append(visit.endedWallSeconds() == 0 ? "now" : date(visit.endedWallSeconds()));
    text.append(", ").append(Words.of(visit.surface()));
    text.append(": found ").append(LeanText.of(visit.found()));
    if (visit.levelled().isKnown()) {
      text.append("; stood ").append(LeanText.of(visit.levelled()));
    }
    if (!visit.laid().isEmpty()) {
      text.append(" on ").append(visit.laid());
    }
    text.append(settled(visit.settled()));
    if (!visit.plan().isEmpty()) {
      text.append("\n    planned: ").append(visit.plan());
    }
    return text.toString();
  }

  private static String settled(Lean settled) {
    if (!settled.isKnown()) {
      return "";
    }
    boolean little = settled.largestRad() < WORTH_SAYING_RAD;
    return little ? "; did not sink" : "; sank: " + LeanText.of(settled);
  }

  private static LocalDate date(long wallSeconds) {
    return LocalDate.ofInstant(Instant.ofEpochSecond(wallSeconds), ZoneOffset.UTC);
  }
}
