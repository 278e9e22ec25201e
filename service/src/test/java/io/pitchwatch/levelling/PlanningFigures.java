package io.pitchwatch.levelling;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Prints what planning takes, as the table of docs/figures/planning.md: processor time of the
 * planning thread for the whole plan, so that what else the machine does counts less.
 */
public final class PlanningFigures {

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private PlanningFigures() {}

  /** Over so many coaches of each sort, from seed 0. */
  public static void main(String[] args) {
    int coaches = Integer.parseInt(args[0]);
    double[] all = new double[4 * coaches];
    for (int sort = 0; sort < 4; sort++) {
      int axles = 2 + sort / 2;
      boolean jacks = sort % 2 == 0;
      for (int i = 0; i < 300; i++) {
        ms(new RandomSites(1_000_000 + i, 6, 25).next(axles, jacks));
      }
      double[] each = new double[coaches];
      for (int i = 0; i < coaches; i++) {
        each[i] = ms(new RandomSites(i, 8, 40).next(axles, jacks));
      }
      System.arraycopy(each, 0, all, sort * coaches, coaches);
      print(axles + " axles, " + (jacks ? "jacks" : "no jacks"), each);
    }
    print("all", all);
  }

  private static double ms(Site site) {
    long start = THREADS.getCurrentThreadCpuTime();
    Plan plan = LevelPlanner.planOnly(site);
    double ms = (THREADS.getCurrentThreadCpuTime() - start) / 1e6;
    List<String> faults = PlanInspection.faults(site, plan.wheels());
    if (plan.verdict() != PlanVerdict.MOVE && !faults.isEmpty()) {
      throw new IllegalStateException(faults + " in " + plan);
    }
    return ms;
  }

  private static void print(String what, double[] unsorted) {
    double[] ms = Arrays.stream(unsorted).sorted().toArray();
    System.out.printf(
        Locale.ROOT,
        "| %s | %d | %.2f | %.1f | %.1f | %.0f | %d |%n",
        what,
        ms.length,
        ms[ms.length / 2],
        ms[(int) (ms.length * 0.99)],
        ms[(int) (ms.length * 0.999)],
        ms[ms.length - 1],
        Arrays.stream(ms).filter(each -> each > 250).count());
  }
}
