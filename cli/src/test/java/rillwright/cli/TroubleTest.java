package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class TroubleTest {

  @Test
  void tooLittleMemoryIsNoDefectOfTheProgram() {
    StringWriter err = new StringWriter();
    assertEquals(70, Trouble.defect(new OutOfMemoryError(), false, new PrintWriter(err, true)));
    assertEquals(
        "rillwright: Java was given too little memory for this; give it more, for example with"
            + " java -Xmx4g -jar rillwright.jar\n",
        err.toString().replace("\r", ""));
  }
}
