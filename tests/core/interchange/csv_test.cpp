#include "core/interchange/csv.hpp"

#include "core/interchange/utf8.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::interchange;

namespace {

using Rows = std::vector<std::vector<std::string>>;

Rows rows_of(std::string_view text) {
  CsvReader reader("file.csv", text);
  Rows rows;
  for (CsvRow row; reader.next(row);) rows.push_back(row.cells);
  return rows;
}

std::string refusal_of(std::string_view text) {
  try {
    (void)rows_of(text);
  } catch (const Refusal& refusal) {
    return refusal.error.where + ": " + refusal.error.sentence;
  }
  return "taken";
}

}  // namespace

// The seven rules of RFC 4180, section 2, each with the example that stands there.
TEST_CASE("rows are read as RFC 4180 describes them") {
  CHECK(rows_of("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") ==
        Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
  CHECK(rows_of("aaa,bbb,ccc\r\nzzz,yyy,xxx") ==
        Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
  CHECK(rows_of("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
        Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
  CHECK(rows_of("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
        Rows{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}});
  CHECK(rows_of("\"aaa\",\"b\"\"bb\",\"ccc\"") == Rows{{"aaa", "b\"bb", "ccc"}});
  CHECK(rows_of("a, b ,c") == Rows{{"a", " b ", "c"}});  // blanks are part of a cell
}

TEST_CASE("what other programs write is read, too") {
  CHECK(rows_of("\xEF\xBB\xBFwhen,animal\n1,2\n") == Rows{{"when", "animal"}, {"1", "2"}});
  CHECK(rows_of("a,b\n\n\r\n1,2\n\n") == Rows{{"a", "b"}, {"1", "2"}});
  CHECK(rows_of("a,\n,b") == Rows{{"a", ""}, {"", "b"}});
  CHECK(rows_of("").empty());
}

TEST_CASE("lines are counted as an editor counts them") {
  CsvReader reader("file.csv", "a,b\r\n\"1\n2\n3\",x\n\nlast,row");
  CsvRow row;
  std::vector<int> lines;
  while (reader.next(row)) lines.push_back(row.line);
  CHECK(lines == std::vector{1, 2, 6});
}

TEST_CASE("quotation marks out of place are refused with their line") {
  CHECK(refusal_of("a,b\n1,\"open\n").find("file.csv, line 2: A quotation mark is opened") == 0);
  CHECK(refusal_of("a,b\n1,5\"\n").find("file.csv, line 2: A quotation mark stands inside") == 0);
  CHECK(refusal_of("\"a\"b,c").find("file.csv, line 1: Something stands behind") == 0);
}

TEST_CASE("bytes that are not UTF-8 are refused with their line") {
  CHECK(refusal_of("a,b\n1,2\nr\xE4tsel,3\n").find("file.csv, line 3: This line holds bytes") == 0);
}

// Unicode 15.0, chapter 3, tables 3-7 to 3-11.
TEST_CASE("well-formed UTF-8 is told from what only looks like it") {
  for (const char* good :
       {"plain", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEE\x80\x80",
        "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF", "\xF0\x9F\x95\xB7"})
    CHECK_FALSE(first_not_utf8(good));
  for (const char* bad :
       {"\x80", "\xC0\xAF", "\xC1\xBF", "\xE0\x9F\x80", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF",
        "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xE2\x82", "\xC2"})
    CHECK(first_not_utf8(bad) == 0u);
  CHECK(first_not_utf8("ab\xFF"
                       "c") == 2u);
}

TEST_CASE("what is written is read back") {
  rc::prop("rows survive", [] {
    const auto cell = rc::gen::container<std::string>(
        rc::gen::element('a', ',', '"', '\n', '\r', ' ', ';', '\0'));
    const auto row =
        rc::gen::resize(6, rc::gen::nonEmpty(rc::gen::container<std::vector<std::string>>(cell)));
    auto rows = *rc::gen::resize(8, rc::gen::container<Rows>(row));
    std::string text;
    for (auto& cells : rows) {
      cells.push_back("end");  // a row that is one empty cell reads as an empty line
      text += csv_row(cells);
    }
    RC_ASSERT(rows_of(text) == rows);
  });
}
