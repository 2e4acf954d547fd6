package stenotherm.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A table of values with commas between them, read strictly: lines that begin with {@code #} and
 * blank lines are left out, the first of the others names the columns, each of the rest has a value
 * for each column. A value may stand in double quotes, with two for one of its own. Values know
 * their place.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class CsvTable {
  private static final String SEMICOLONS =
      "has semicolons; separate values by commas, and write numbers with a point";

  private final List<ScalarNode> header;
  private final List<List<ScalarNode>> rows;

  private CsvTable(List<ScalarNode> header, List<List<ScalarNode>> rows) {
    this.header = header;
    this.rows = rows;
  }

  /**
   * Reads a table from text.
   *
   * @param fileName the name that messages show
   * @param text the table
   * @return the table
   * @throws TextFormatException if it is larger than {@link Document#MAXIMUM_BYTES}, has characters
   *     that are no text, no line, or a line with more or fewer values than columns
   */
  public static CsvTable parse(String fileName, String text) {
    SourceText source = new SourceText(fileName, text);
    source.check();
    List<ScalarNode> header = List.of();
    List<List<ScalarNode>> rows = new ArrayList<>();
    String[] lines = source.text().split("\r\n|\r|\n", -1);
    for (int line = 0; line < lines.length; line++) {
      if (lines[line].isBlank() || lines[line].startsWith("#")) {
        continue;
      }
      List<ScalarNode> fields = fields(source, line + 1, lines[line], header);
      if (header.isEmpty()) {
        header = fields;
      } else {
        rows.add(fields);
      }
    }
    if (header.isEmpty()) {
      throw new TextFormatException(source.at(1, 1), "", "has no line that names the columns");
    }
    return new CsvTable(header, List.copyOf(rows));
  }

  /**
   * Reads a table from a file in UTF-8, with or without a byte order mark.
   *
   * @param path the file; messages show it as given
   * @return the table
   * @throws IOException if the file cannot be read
   * @throws TextFormatException as {@link #parse}, or if the file is not in UTF-8
   */
  public static CsvTable read(Path path) throws IOException {
    try (InputStream stream = Files.newInputStream(path)) {
      // one byte more than allowed is enough to see that the file is too large
      byte[] bytes = stream.readNBytes(Document.MAXIMUM_BYTES + 1);
      return parse(path.toString(), Document.decoded(path.toString(), bytes));
    }
  }

  /**
   * Makes a table of values that were read elsewhere. Messages name row and column as if the table
   * were text: the names of the columns in line 1, and the number of a value in its row.
   *
   * @param fileName the name that messages show
   * @param columns names of the columns, at least one
   * @param rows a value for each column in each
   * @return the table
   * @throws TextFormatException if there is no column, or a row has more or fewer values
   */
  public static CsvTable of(String fileName, List<String> columns, List<List<String>> rows) {
    if (columns.isEmpty()) {
      throw new TextFormatException(new TextPosition(fileName, 1, 1), "", "has no columns");
    }
    List<ScalarNode> header = new ArrayList<>();
    for (int column = 0; column < columns.size(); column++) {
      header.add(
          new ScalarNode(new TextPosition(fileName, 1, column + 1), "", columns.get(column)));
    }
    List<List<ScalarNode>> all = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      List<String> texts = rows.get(row);
      if (texts.size() != columns.size()) {
        throw uneven(new TextPosition(fileName, row + 2, 1), texts.size(), columns.size());
      }
      List<ScalarNode> values = new ArrayList<>();
      for (int column = 0; column < columns.size(); column++) {
        values.add(
            new ScalarNode(
                new TextPosition(fileName, row + 2, column + 1),
                columns.get(column),
                texts.get(column)));
      }
      all.add(List.copyOf(values));
    }
    return new CsvTable(List.copyOf(header), List.copyOf(all));
  }

  /** The values of a line, each with its column's name as its path. */
  private static List<ScalarNode> fields(
      SourceText source, int line, String text, List<ScalarNode> header) {
    List<ScalarNode> fields = new ArrayList<>();
    StringBuilder value = new StringBuilder();
    boolean quoted = false;
    int column = 1;
    int start = 1;
    int[] characters = text.codePoints().toArray();
    for (int index = 0; index < characters.length; index++, column++) {
      int character = characters[index];
      if (character == '"') {
        boolean isDoubled = quoted && index + 1 < characters.length && characters[index + 1] == '"';
        if (isDoubled) {
          value.append('"');
          index++;
          column++;
        } else {
          quoted = !quoted;
        }
      } else if (character == ',' && !quoted) {
        fields.add(field(source, line, start, value, header, fields.size()));
        value.setLength(0);
        start = column + 1;
      } else {
        value.appendCodePoint(character);
      }
    }
    if (quoted) {
      throw new TextFormatException(source.at(line, start), "", "has a quote that does not end");
    }
    fields.add(field(source, line, start, value, header, fields.size()));
    boolean fits = header.isEmpty() ? fields.size() > 1 : fields.size() == header.size();
    if (!fits && text.indexOf(';') >= 0) {
      // with decimal commas the number of values says nothing
      throw new TextFormatException(source.at(line, 1), "", SEMICOLONS);
    }
    if (!header.isEmpty() && !fits) {
      throw uneven(source.at(line, 1), fields.size(), header.size());
    }
    return List.copyOf(fields);
  }

  private static TextFormatException uneven(TextPosition position, int values, int columns) {
    return new TextFormatException(
        position,
        "",
        "has "
            + values
            + (values == 1 ? " value" : " values")
            + " but there are "
            + columns
            + (columns == 1 ? " column" : " columns"));
  }

  private static ScalarNode field(
      SourceText source,
      int line,
      int column,
      StringBuilder value,
      List<ScalarNode> header,
      int number) {
    String path = number < header.size() ? header.get(number).text() : "";
    return new ScalarNode(source.at(line, column), path, value.toString().strip());
  }

  /**
   * Returns the names of the columns.
   *
   * @return at least one; unmodifiable
   */
  public List<ScalarNode> header() {
    return header;
  }

  /**
   * Returns the names of the columns, of which every complaint shows a whole line that would do, so
   * that a reader learns of all columns at once.
   *
   * @param example the line, for example {@code "date,low [°F],high [°F]"}
   * @return as {@link #header}; unmodifiable
   */
  public List<ScalarNode> headerLike(String example) {
    String hint = " (the first line may be: " + example + ")";
    return header.stream().map(name -> name.withHint(hint)).toList();
  }

  /**
   * Returns the rows.
   *
   * @return a value for each column in each; unmodifiable
   */
  public List<List<ScalarNode>> rows() {
    return rows;
  }

  /**
   * Reads a column of dates. Where they are written as two numbers and a year, the whole column
   * tells which number is the day: the one that is above 12 in some row.
   *
   * @param column number of the column, from 0
   * @return a date for each row; unmodifiable
   * @throws TextFormatException if a value is none, or the month and the day cannot be told apart
   */
  public List<LocalDate> dates(int column) {
    CalendarText.Place place = place(column);
    return rows.stream().map(row -> row.get(column).date(place)).toList();
  }

  /**
   * Reads a column of dates with times, as {@link #dates}. Unlike in a single value, {@code 12:00
   * AM} is midnight and {@code 12:00 PM} noon, as in all programs that write tables, and {@code
   * 4:00} is in the morning.
   *
   * @param column number of the column, from 0
   * @return a date and a time for each row; unmodifiable
   * @throws TextFormatException if a value is none, or the month and the day cannot be told apart
   */
  public List<LocalDateTime> datesWithTimes(int column) {
    CalendarText.Place place = place(column);
    return rows.stream().map(row -> row.get(column).localDateTime(place)).toList();
  }

  private CalendarText.Place place(int column) {
    Optional<ScalarNode> dayFirst = firstTold(column, CalendarText.Place.COLUMN_DAY_FIRST);
    Optional<ScalarNode> monthFirst = firstTold(column, CalendarText.Place.COLUMN_MONTH_FIRST);
    if (dayFirst.isPresent() && monthFirst.isPresent()) {
      throw dayFirst
          .get()
          .fail(
              Messages.quote(dayFirst.get().text())
                  + " has the day first, "
                  + Messages.quote(monthFirst.get().text())
                  + " in line "
                  + monthFirst.get().position().line()
                  + " the month: write year-month-day or the month's name in all rows");
    }
    if (dayFirst.isPresent()) {
      return CalendarText.Place.COLUMN_DAY_FIRST;
    }
    return monthFirst.isPresent()
        ? CalendarText.Place.COLUMN_MONTH_FIRST
        : CalendarText.Place.COLUMN;
  }

  /** The first row that tells which number is the month, and tells this. */
  private Optional<ScalarNode> firstTold(int column, CalendarText.Place told) {
    return rows.stream()
        .map(row -> row.get(column))
        .filter(value -> !value.isBlank() && CalendarText.told(value.text()) == told)
        .findFirst();
  }
}
