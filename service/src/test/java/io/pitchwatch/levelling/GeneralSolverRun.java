package io.pitchwatch.levelling;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * The planner beside a general constraint solver on many random coaches of up to 8 kinds and 40
 * pieces, as docs/figures/planning.md quotes it. The solver does not look at its time limit inside
 * one long propagation: so it works in a process of its own, which is ended when it stalls, and
 * another one goes on with the next coach.
 */
final class GeneralSolverRun {

  private static final int SECONDS = 20;
  private static final String SAME = "same";
  private static final String DIFFERENT = "different";

  private final List<double[]> ms = new ArrayList<>();
  private int unfinished;
  private int different;

  private GeneralSolverRun() {}

  /** The worker: first seed, and the one at which it ends. */
  public static void main(String[] args) {
    work(Long.parseLong(args[0]), Long.parseLong(args[1]));
  }

  /** Compares so many coaches, from a seed on; prints what it finds as it goes. */
  static GeneralSolverRun over(long seed, int coaches) throws IOException, InterruptedException {
    GeneralSolverRun run = new GeneralSolverRun();
    long next = seed;
    while (next < seed + coaches) {
      next = run.watch(next, seed + coaches);
    }
    run.print();
    return run;
  }

  int different() {
    return different;
  }

  /** How many times as long the general solver takes, over all coaches that it finishes. */
  double ratio() {
    return sum(1) / sum(0);
  }

  private double sum(int whose) {
    return ms.stream().mapToDouble(each -> each[whose]).sum();
  }

  /** Solves on, a line for each coach. */
  private static void work(long from, long end) {
    for (int i = 0; i < 300; i++) {
      WheelsAlone.plan(new RandomSites(1_000_000 + i, 6, 25).next());
    }
    for (int i = 0; i < 5; i++) {
      Site site = new RandomSites(1_000_000 + i, 3, 6).next();
      new GeneralSolver(site, WheelsAlone.ends(site)).solve(SECONDS);
    }
    System.out.println("ready");
    for (long seed = from; seed < end; seed++) {
      Site site = new RandomSites(seed, 8, 40).next();
      long start = System.nanoTime();
      WheelPlan plan = WheelsAlone.plan(site);
      double ours = (System.nanoTime() - start) / 1e6;
      start = System.nanoTime();
      Optional<GeneralSolver.Best> best =
          new GeneralSolver(site, WheelsAlone.ends(site)).solve(SECONDS);
      double general = (System.nanoTime() - start) / 1e6;
      String said =
          best.map(b -> b.isMatchedBy(plan, WheelsAlone.ends(site)) ? SAME : DIFFERENT)
              .orElse("late");
      System.out.printf(Locale.ROOT, "%d %.4f %.4f %s%n", seed, ours, general, said);
    }
  }

  /** Watches a worker until it is through or stalls; the seed to go on with. */
  private long watch(long from, long end) throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    List<String> command = new ArrayList<>(List.of(java, "-Xmx1g", "-XX:+UseSerialGC", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.addAll(List.of(GeneralSolverRun.class.getName(), "" + from, "" + end));
    Process worker =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    BlockingQueue<String> lines = new LinkedBlockingQueue<>();
    Thread reader = new Thread(() -> read(worker, lines));
    reader.start();
    long next = from;
    String line = lines.poll(5L * SECONDS, TimeUnit.SECONDS);
    while (line != null && next < end) {
      line = lines.poll(3L * SECONDS, TimeUnit.SECONDS);
      if (line != null) {
        take(line.split(" ", -1));
        next++;
      }
    }
    worker.destroyForcibly();
    reader.join();
    if (next == end) {
      return end;
    }
    unfinished++;
    System.out.println("seed " + next + ": the general solver stalls");
    return next + 1;
  }

  private static void read(Process worker, BlockingQueue<String> lines) {
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(worker.getInputStream(), StandardCharsets.UTF_8))) {
      out.lines().forEach(lines::add);
    } catch (IOException e) {
      // The worker was ended.
    }
  }

  private void take(String[] words) {
    if (words[3].equals(SAME) || words[3].equals(DIFFERENT)) {
      ms.add(new double[] {Double.parseDouble(words[1]), Double.parseDouble(words[2])});
    } else {
      unfinished++;
    }
    if (!words[3].equals(SAME)) {
      System.out.println("seed " + words[0] + ": " + words[3]);
    }
    different += words[3].equals(DIFFERENT) ? 1 : 0;
    if (ms.size() % 100 == 0) {
      print();
    }
  }

  private void print() {
    double[] ours = ms.stream().mapToDouble(each -> each[0]).sorted().toArray();
    double[] general = ms.stream().mapToDouble(each -> each[1]).sorted().toArray();
    if (ours.length == 0) {
      return;
    }
    System.out.println(figures("planner", ours));
    System.out.println(figures("general solver", general));
    System.out.printf(
        Locale.ROOT,
        "both %d, different %d, not finished %d; times as long: %.0f by sums, %.0f by medians%n",
        ours.length,
        different,
        unfinished,
        ratio(),
        general[ours.length / 2] / ours[ours.length / 2]);
  }

  private static String figures(String what, double[] ms) {
    return String.format(
        Locale.ROOT,
        "%-15s p50 %.3f ms  p99 %.2f ms  worst %.2f ms",
        what,
        ms[ms.length / 2],
        ms[(int) (ms.length * 0.99)],
        ms[ms.length - 1]);
  }
}
