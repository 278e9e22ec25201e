package io.pitchwatch.levelling;

import java.util.Arrays;
import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;

/**
 * value = table[argument − offset] for a table that never falls. The solver's own element
 * constraint reads the whole table each time, which takes minutes with tables of an arctangent.
 */
final class IncreasingTable extends Propagator<IntVar> {

  private final IntVar value;
  private final IntVar argument;
  private final int[] table;
  private final int offset;

  IncreasingTable(IntVar value, IntVar argument, int[] table, int offset) {
    super(new IntVar[] {value, argument}, PropagatorPriority.BINARY, false);
    this.value = value;
    this.argument = argument;
    this.table = table;
    this.offset = offset;
  }

  @Override
  public void propagate(int mask) throws ContradictionException {
    boolean again = true;
    while (again) {
      value.updateLowerBound(table[argument.getLB() - offset], this);
      value.updateUpperBound(table[argument.getUB() - offset], this);
      again = argument.updateLowerBound(first(value.getLB()) + offset, this);
      again |= argument.updateUpperBound(first(value.getUB() + 1) - 1 + offset, this);
    }
  }

  /** Index of the first entry that is no less. */
  private int first(int least) {
    int found = Arrays.binarySearch(table, least);
    if (found < 0) {
      return -found - 1;
    }
    while (found > 0 && table[found - 1] == least) {
      found--;
    }
    return found;
  }

  @Override
  public ESat isEntailed() {
    if (!argument.isInstantiated() || !value.isInstantiated()) {
      return ESat.UNDEFINED;
    }
    return ESat.eval(table[argument.getValue() - offset] == value.getValue());
  }
}
