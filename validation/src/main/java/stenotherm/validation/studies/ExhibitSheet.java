package stenotherm.validation.studies;

import java.util.List;

/** What exhibits are shown on: a page of a report, a console. */
public interface ExhibitSheet {
  /**
   * Shows a paragraph.
   *
   * @param text what it says
   */
  void paragraph(String text);

  /**
   * Shows a table.
   *
   * @param header names of the columns
   * @param rows the rows, each as long as the header
   */
  void table(List<String> header, List<List<String>> rows);
}
