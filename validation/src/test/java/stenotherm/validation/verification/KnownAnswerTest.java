package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stenotherm.validation.fault.KnownAnswer;

/** The answers by which seeded faults are told, from a core without any. */
class KnownAnswerTest {
  @ParameterizedTest
  @EnumSource
  void isRight(KnownAnswer answer) {
    assertEquals("", KnownAnswer.failure(answer.name()));
  }
}
