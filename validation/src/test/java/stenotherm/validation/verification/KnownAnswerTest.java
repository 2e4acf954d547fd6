package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stenotherm.validation.fault.KnownAnswer;

/** The answers by which seeded faults are told, from a core without any. */
class KnownAnswerTest {
  @ParameterizedTest
  @MethodSource("stenotherm.validation.fault.KnownAnswer#all")
  void isRight(KnownAnswer answer) {
    assertEquals("", KnownAnswer.failure(answer.name()));
  }
}
