package stenotherm.examples;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import stenotherm.parcel.Parcel;
import stenotherm.report.Answer;
import stenotherm.report.HarmReport;
import stenotherm.scenario.Scenario;

/** What would harm a packing first? */
@Command(
    name = BreakParcel.NAME,
    description = {
      "Lets things go wrong with a packing, one by one and in pairs: delays, sun, a warmer that is"
          + " loose, dead or taped over, blocked openings, other faces up, other weather, and what"
          + " the file has under mishaps. The worst comes first, with the hour at which an animal"
          + " first leaves what it tolerates. Pairs are made of what the packing withstands alone.",
      "Results are calculations on stated assumptions, never a permission to send an animal."
    },
    footer = ConsoleCommand.PROGRAM + BreakParcel.NAME + " my-scenario.yaml --out my-mishaps")
final class BreakParcel extends PackingCommand {
  static final String NAME = "break";

  @Mixin private AtMost atMost = new AtMost();

  @Override
  List<String> fileNames() {
    return HarmReport.FILES;
  }

  @Override
  String folderName() {
    return NAME;
  }

  @Override
  Answer answer(Scenario scenario, Progress progress) {
    Parcel packing =
        asked(scenario, meant -> "What would harm " + quoted(meant) + " first?", "a minute or two");
    return atMost.ask(
        "Fewer mishaps in the file take less.",
        progress,
        watcher -> HarmReport.of(scenario, packing, settings(), threads(), watcher));
  }
}
