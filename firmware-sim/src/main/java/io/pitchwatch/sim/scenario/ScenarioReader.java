package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.world.Attitude;
import io.pitchwatch.sim.world.Chassis;
import io.pitchwatch.sim.world.Climate;
import io.pitchwatch.sim.world.Ground;
import io.pitchwatch.sim.world.Happenings;
import io.pitchwatch.sim.world.Site;
import io.pitchwatch.sim.world.Soil;
import io.pitchwatch.sim.world.Surface;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;

/** Reads a scenario file from top to bottom; docs/scenarios.md describes what may stand in it. */
final class ScenarioReader {

  private static final double DAY_S = 86400;
  private static final double HOUR_S = 3600;
  private static final double MINUTE_S = 60;

  /** Parts of a coach's config that concern the service alone. */
  private static final String[] FOR_THE_SERVICE = {
    "coach", "levelling", "fridge", "door", "mqtt", "page", "store"
  };

  private final Source source;
  private final List<Complaint> complaints;

  ScenarioReader(Source source, List<Complaint> complaints) {
    this.source = source;
    this.complaints = complaints;
  }

  /** Reads everything; what it returns is of use only if there was nothing to complain of. */
  Scenario read(TomlTable toml) {
    Section top = new Section(source.name(), toml, complaints);
    Section coach = coach(top);
    String name = top.text("name", source.name().replaceFirst("^.*/", "").replace(".toml", ""));
    long seed = top.whole("seed", 1, Long.MIN_VALUE, Long.MAX_VALUE);
    List<SensorSetup> sensors = sensors(top, coach);
    Section place = top.table("site");
    String siteName = place.text("name", "");
    Site site = site(place);
    CoachPlan plan = CoachReader.read(coach, rollArmM(top.table("body"), coach.has("axle")));
    Happenings happenings = new Happenings(seed, plan.chassis(), site);
    EventReader events = new EventReader(plan, happenings, site);
    top.tables("event").stream()
        .flatMap(event -> EventReader.times(event).stream())
        .sorted(Comparator.comparingDouble(EventReader.Timed::atS))
        .forEach(events::read);
    events.finish();
    Climate climate = climate(top.table("climate"), events);
    double runS = run(top.table("run"));
    top.finish();
    return new Scenario(
        new Scenario.Names(name, siteName), seed, runS, sensors, events.script(climate));
  }

  /** The section in which the coach is described: this file, or the one it names. */
  private Section coach(Section top) {
    top.leave(FOR_THE_SERVICE);
    top.leave("axle", "jack-pair", "piece", "pad");
    if (!top.isText("coach")) {
      return top;
    }
    Source other = source.beside(top.text("coach"));
    try {
      TomlParseResult parsed = Toml.parse(other.text());
      parsed
          .errors()
          .forEach(
              error ->
                  complaints.add(
                      new Complaint(
                          other.name(), error.position().line(), "", error.toString(), "TOML")));
      return new Section(other.name(), parsed, complaints);
    } catch (IOException e) {
      top.complain("coach", "the path of a coach's config, beside this file");
      return top;
    }
  }

  private List<SensorSetup> sensors(Section top, Section coach) {
    List<Section> own = top.tables("sensor");
    boolean lent = own.isEmpty() && coach != top;
    List<Section> sections = lent ? coach.tables("sensor") : own;
    SensorReader reader = new SensorReader(source, complaints, lent);
    List<SensorSetup> sensors = new ArrayList<>();
    for (Section section : sections) {
      SensorSetup sensor = reader.read(section);
      if (sensors.stream()
          .anyMatch(o -> o.bus() == sensor.bus() && o.address() == sensor.address())) {
        section.complain("address", "an address that no other sensor on this bus has");
      } else {
        sensors.add(sensor);
      }
    }
    if (sections.isEmpty()) {
      sensors.add(reader.read(top.table("sensor")));
    }
    return sensors;
  }

  private static Site site(Section section) {
    Ground ground = new Ground(Attitude.LEVEL, Surface.CONCRETE.modulusPa());
    Site usual = new Site(ground, Soil.of(Surface.CONCRETE), Site.USUALLY_UNEVEN);
    Site site = SiteReader.site(section, usual);
    section.finish();
    return site;
  }

  /** A coach that nobody described leans as the ground does. */
  private static double rollArmM(Section section, boolean described) {
    double usualM = described ? Chassis.USUAL_ROLL_ARM_M : 0;
    double armM = section.amount("roll-arm", Dimension.LENGTH, usualM);
    section.finish();
    return armM;
  }

  private Climate climate(Section section, EventReader events) {
    Climate climate =
        new Climate(
            section.quantity("temperature", Dimension.TEMPERATURE, Climate.MILD_C),
            section.amount("day-swing", Dimension.WARMTH, 0),
            section.amount("starts-at", Dimension.TIME, 0) / HOUR_S,
            events.spells());
    section.finish();
    return climate;
  }

  private double run(Section section) {
    double seconds =
        section.number("days", 0, 0, 4000) * DAY_S
            + section.number("hours", 0, 0, 100_000) * HOUR_S
            + section.number("minutes", 0, 0, 6_000_000) * MINUTE_S;
    if (section.isPresent() && seconds <= 0) {
      section.complain("days", "days, hours or minutes above 0");
    }
    section.finish();
    return section.isPresent() ? seconds : HOUR_S;
  }
}
