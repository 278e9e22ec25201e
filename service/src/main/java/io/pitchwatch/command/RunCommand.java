package io.pitchwatch.command;

import io.pitchwatch.config.Config;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The daemon. */
@Command(
    name = "run",
    mixinStandardHelpOptions = true,
    description = "Watches the coach until it is stopped: the daemon.",
    footer = {"", "Exit codes: 0 stopped, 2 wrong config or port taken, 75 to be started again."})
final class RunCommand implements Callable<Integer> {

  /** EX_TEMPFAIL of sysexits.h: whoever supervises the process starts it again. */
  private static final int START_AGAIN = 75;

  @Spec CommandSpec spec;
  @Mixin ConfigOption config;

  @Override
  public Integer call() throws InterruptedException {
    PrintWriter err = spec.commandLine().getErr();
    Optional<Config> read = config.read(err);
    return read.isPresent() ? run(read.get(), BusChoice.KERNEL, err) : ExitCode.NOT_KNOWN;
  }

  private static int run(Config config, BusChoice bus, PrintWriter err)
      throws InterruptedException {
    CountDownLatch over = new CountDownLatch(1);
    Service.Ending ending = new Service.Ending(report -> {}, why -> end(over, why, err));
    Service.Start start = Service.start(config, bus, ending);
    if (start instanceof Service.Start.Refused refused) {
      err.println(refused.why());
      return ExitCode.NOT_KNOWN;
    }
    Service service = ((Service.Start.Running) start).service();
    Runtime.getRuntime().addShutdownHook(new Thread(service::close, "stop"));
    over.await();
    return START_AGAIN;
  }

  private static void end(CountDownLatch over, String why, PrintWriter err) {
    err.println(why + "; ending, to be started again.");
    err.flush();
    over.countDown();
  }
}
