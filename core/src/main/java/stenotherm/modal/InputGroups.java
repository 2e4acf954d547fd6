package stenotherm.modal;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Suggestions;
import stenotherm.conduction.Port;
import stenotherm.conduction.ReducibleNetwork;

/**
 * Groups of inputs that always have the same value. For the basis each group is one input, with the
 * sum of the loads. Immutable.
 */
final class InputGroups {
  private final List<Port> inputs;

  /** Positions of the inputs of each group; each input is in one group. */
  private final int[][] members;

  /** How many groups, the first ones, are not weak. */
  private final int strong;

  /**
   * Groups inputs.
   *
   * @param together names of inputs that have the same value; sets with a common input become one
   *     group
   * @param weak names of inputs that hardly heat; they come after the others
   */
  InputGroups(List<Port> inputs, List<Set<String>> together, Set<String> weak) {
    this.inputs = inputs;
    int[] first = new int[inputs.size()];
    for (int input = 0; input < first.length; input++) {
      first[input] = input;
    }
    for (Set<String> names : together) {
      join(positions(names), first);
    }
    List<int[]> found = new ArrayList<>();
    List<int[]> last = new ArrayList<>();
    for (int input = 0; input < first.length; input++) {
      if (first[input] == input) {
        (weak.contains(inputs.get(input).name()) ? last : found).add(allOf(first, input));
      }
    }
    strong = found.size();
    found.addAll(last);
    members = found.toArray(new int[0][]);
  }

  /** Makes groups that were stored. */
  InputGroups(List<Port> inputs, int[][] members) {
    this.inputs = inputs;
    this.members = members;
    this.strong = members.length;
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
        throw Suggestions.unknown(
            "inputs together", name, inputs.stream().map(Port::name).toList());
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

  /** How many groups, the first ones, are not weak. */
  int strong() {
    return strong;
  }

  int[] members(int group) {
    return members[group];
  }

  /** Unit of the inputs of a group. */
  String unit(int group) {
    return inputs.get(members[group][0]).unit();
  }

  /** The load vectors of all groups. */
  List<LoadVector> loads(ReducibleNetwork operator) {
    List<LoadVector> loads = new ArrayList<>();
    for (int group = 0; group < members.length; group++) {
      loads.add(new LoadVector(loadOf(operator, group)));
    }
    return loads;
  }

  /** Heat that each cell gets if all inputs of a group are 1 [W]. */
  private double[] loadOf(ReducibleNetwork operator, int group) {
    double[] load = operator.heatOf(members[group][0]);
    for (int m = 1; m < members[group].length; m++) {
      double[] more = operator.heatOf(members[group][m]);
      for (int i = 0; i < load.length; i++) {
        load[i] += more[i];
      }
    }
    return load;
  }

  /** Refuses different values of inputs in one group. */
  void check(double[] values) {
    for (int[] group : members) {
      for (int m = 1; m < group.length; m++) {
        if (values[group[m]] != values[group[0]]) {
          throw new InvalidInputException(
              "input '" + inputs.get(group[m]).name() + "'",
              values[group[m]]
                  + " differs from "
                  + values[group[0]]
                  + " of '"
                  + inputs.get(group[0]).name()
                  + "', but the model was built for equal values of them");
        }
      }
    }
  }
}
