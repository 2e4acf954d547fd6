package stenotherm.transit;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stenotherm.journey.Journey;
import stenotherm.modal.ReducedModel;
import stenotherm.parcel.Parcel;

/** What a result takes in memory beside the model, the parcel and the journey that it names. */
final class Weight {
  /** About what an object takes beside its own values [bytes]. */
  private static final int HEADER = 16;

  /** A reference or a number [bytes]. */
  private static final int WORD = 8;

  private static final List<Class<?>> KEPT_ELSEWHERE =
      List.of(
          ParcelModel.class,
          ParcelBody.class,
          ReducedParcel.class,
          ReducedModel.class,
          Reduction.class,
          Parcel.class,
          Journey.class);

  private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Deque<Object> left = new ArrayDeque<>();
  private long bytes;

  private Weight() {}

  static long of(TransitResult result) {
    Weight weight = new Weight();
    weight.add(result);
    while (!weight.left.isEmpty()) {
      weight.weigh(weight.left.pop());
    }
    return weight.bytes;
  }

  private void add(@Nullable Object object) {
    if (object != null
        && !(object instanceof Enum<?>)
        && !(object instanceof Class<?>)
        && !isKeptElsewhere(object)
        && seen.add(object)) {
      left.push(object);
    }
  }

  private static boolean isKeptElsewhere(Object object) {
    return KEPT_ELSEWHERE.stream().anyMatch(kind -> kind.isInstance(object));
  }

  private void weigh(Object object) {
    bytes += HEADER;
    if (object instanceof Map<?, ?> map) {
      map.forEach(
          (key, value) -> {
            bytes += HEADER + 4 * WORD;
            add(key);
            add(value);
          });
    } else if (object instanceof Collection<?> collection) {
      bytes += (long) WORD * collection.size();
      collection.forEach(this::add);
    } else if (object instanceof String text) {
      bytes += HEADER + text.length();
    } else if (object instanceof Number || object instanceof Boolean) {
      bytes += WORD;
    } else if (object.getClass().isArray()) {
      weighArray(object);
    } else {
      for (Class<?> of = object.getClass(); of != Object.class; of = of.getSuperclass()) {
        for (Field field : of.getDeclaredFields()) {
          weighField(object, field);
        }
      }
    }
  }

  private void weighArray(Object array) {
    int length = Array.getLength(array);
    bytes += (long) WORD * length;
    if (!array.getClass().getComponentType().isPrimitive()) {
      for (int index = 0; index < length; index++) {
        add(Array.get(array, index));
      }
    }
  }

  private void weighField(Object object, Field field) {
    if (Modifier.isStatic(field.getModifiers())) {
      return;
    }
    bytes += WORD;
    if (!field.getType().isPrimitive()) {
      field.setAccessible(true);
      try {
        add(field.get(object));
      } catch (IllegalAccessException impossible) {
        throw new AssertionError(impossible);
      }
    }
  }
}
