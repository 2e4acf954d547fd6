package stenotherm.validation.cases;

import java.util.List;
import stenotherm.picture.Picture;
import stenotherm.validation.studies.ExhibitSheet;

/** A report in some format; texts are plain and are escaped as the format needs. */
interface Page extends ExhibitSheet {
  /** Width of a picture [pixel]. */
  int WIDTH = 860;

  /** Height of a picture [pixel]. */
  int HEIGHT = 380;

  /** Starts a section; level 1 is the title. */
  void heading(int level, String text);

  void list(List<String> items);

  /**
   * A picture.
   *
   * @param name name of its file without an ending
   * @param picture the picture
   */
  void picture(String name, Picture picture);

  /** The text of the whole page. */
  String text();
}
