package stenotherm.modal;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.Port;
import stenotherm.conduction.ReducibleNetwork;

/**
 * Which inputs of a body always have the same value: to the basis they are one input, whose answer
 * is the sum of theirs. Immutable.
 */
final class Drives {
  private final List<Port> inputs;

  /** Positions of the inputs that each drive stands for, each input in one drive. */
  private final int[][] members;

  /**
   * Groups inputs.
   *
   * @param together names of inputs that are one; an input in several sets joins them
   */
  Drives(List<Port> inputs, List<Set<String>> together) {
    this.inputs = inputs;
    int[] first = new int[inputs.size()];
    for (int input = 0; input < first.length; input++) {
      first[input] = input;
    }
    for (Set<String> names : together) {
      join(positions(names), first);
    }
    List<int[]> found = new ArrayList<>();
    for (int input = 0; input < first.length; input++) {
      if (first[input] == input) {
        found.add(allOf(first, input));
      }
    }
    members = found.toArray(new int[0][]);
  }

  /** Takes over what was read. */
  Drives(List<Port> inputs, int[][] members) {
    this.inputs = inputs;
    this.members = members;
  }

  List<Port> inputs() {
    return inputs;
  }

  private List<Integer> positions(Set<String> names) {
    List<Integer> positions = new ArrayList<>();
    for (String name : new TreeSet<>(names)) {
      int position = 0;
      while (position < inputs.size() && !inputs.get(position).name().equals(name)) {
        position++;
      }
      if (position == inputs.size()) {
        throw new InvalidInputException(
            "inputs together",
            "there is no '" + name + "'; there are " + inputs.stream().map(Port::name).toList());
      }
      positions.add(position);
      Port one = inputs.get(positions.get(0));
      if (!inputs.get(position).unit().equals(one.unit())) {
        throw new InvalidInputException(
            "inputs together",
            "'"
                + name
                + "' is in "
                + inputs.get(position).unit()
                + ", '"
                + one.name()
                + "' in "
                + one.unit());
      }
    }
    return positions;
  }

  private static void join(List<Integer> positions, int[] first) {
    int least = first.length;
    for (int position : positions) {
      least = Math.min(least, first[position]);
    }
    for (int position : positions) {
      int joined = first[position];
      for (int input = 0; input < first.length; input++) {
        first[input] = first[input] == joined ? least : first[input];
      }
    }
  }

  private static int[] allOf(int[] first, int least) {
    List<Integer> all = new ArrayList<>();
    for (int input = 0; input < first.length; input++) {
      if (first[input] == least) {
        all.add(input);
      }
    }
    return all.stream().mapToInt(Integer::intValue).toArray();
  }

  int count() {
    return members.length;
  }

  int[] members(int drive) {
    return members[drive];
  }

  /** Unit of the inputs of a drive. */
  String unit(int drive) {
    return inputs.get(members[drive][0]).unit();
  }

  /** The heats of all drives. */
  List<HeatPattern> heats(ReducibleNetwork operator) {
    List<HeatPattern> heats = new ArrayList<>();
    for (int drive = 0; drive < members.length; drive++) {
      heats.add(new HeatPattern(heatOf(operator, drive)));
    }
    return heats;
  }

  /** The heat that a value of 1 of all its inputs gives each cell. */
  private double[] heatOf(ReducibleNetwork operator, int drive) {
    double[] heat = operator.heatOf(members[drive][0]);
    for (int m = 1; m < members[drive].length; m++) {
      double[] more = operator.heatOf(members[drive][m]);
      for (int i = 0; i < heat.length; i++) {
        heat[i] += more[i];
      }
    }
    return heat;
  }

  /** Refuses inputs that should be the same and are not. */
  void check(double[] values) {
    for (int[] drive : members) {
      for (int m = 1; m < drive.length; m++) {
        if (values[drive[m]] != values[drive[0]]) {
          throw new InvalidInputException(
              "input '" + inputs.get(drive[m]).name() + "'",
              values[drive[m]]
                  + " differs from "
                  + values[drive[0]]
                  + " of '"
                  + inputs.get(drive[0]).name()
                  + "', but the model was built for inputs that go together");
        }
      }
    }
  }
}
