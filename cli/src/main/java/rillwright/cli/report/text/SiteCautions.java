package rillwright.cli.report.text;

import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.study.Job;
import rillwright.solver.network.Network;
import rillwright.solver.pumping.PumpPlace;

/** What whoever digs, wires or buys by an answer must keep in mind. */
public final class SiteCautions {
  /** Of pipes. */
  public static final String DIGGING =
      "Have buried services located before digging. Any trench can collapse; follow local rules"
          + " before entering it.";

  /** Of pumps. */
  public static final String WIRING =
      "Wiring for a pump by water is for a qualified electrician, licensed where the law requires"
          + " it, with ground-fault (GFCI or RCD) protection; unplug before hands go in. Local"
          + " codes decide.";

  /** Of pumps that run together. */
  public static final String SEVERAL_PUMPS =
      "Several pumps: in parallel each needs a check valve of its own, or water runs back"
          + " through one that stands still; in series the last one's housing bears the head of"
          + " all, so ask its maker; submersible ones are not tried in series (common practice).";

  /** Where nothing is pumped. */
  public static final String UPHILL =
      "Water held uphill needs an overflow that goes somewhere safe; keep it clear.";

  private SiteCautions() {}

  /** Of pipes, and of pumps where there are any. */
  public static void print(Network network, PageBuilder page) {
    print(
        !PumpPlace.listChosen(network).isEmpty() || !PumpPlace.listPlanned(network).isEmpty(),
        page);
  }

  /** The same, where it is known whether something is pumped. */
  public static void print(boolean pumped, PageBuilder page) {
    page.paragraph(DIGGING);
    page.paragraph(pumped ? WIRING : UPHILL);
  }

  /** Of what a pump or pipe is chosen by, where a stream takes the water back to a pond. */
  public static void printFilling(Job job, PageBuilder page) {
    if (job.streams()) {
      page.paragraph(
          "Not computed here: what a stream holds is drawn from the pond when the pump starts, and"
              + " comes back when it stops. Before buying, run \"rillwright stream\" with what is"
              + " chosen in the file.");
    }
  }

  /** Of a pump alone. */
  public static void printWiring(PageBuilder page) {
    page.paragraph(WIRING);
  }
}
