#include "core/code/code.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "core/code/check_character.hpp"

namespace rackside {
namespace {

struct KindRow {
  CodeKind kind;
  char character;
  std::string_view word;
};

constexpr std::array kinds{
    KindRow{CodeKind::Enclosure, 'T', "tub"},
    KindRow{CodeKind::Person, 'P', "badge"},
    KindRow{CodeKind::Action, 'A', "action card"},
    KindRow{CodeKind::Shelf, 'R', "shelf"},
};

const KindRow& row_of(CodeKind kind) { return kinds[static_cast<std::size_t>(kind)]; }

std::optional<CodeKind> kind_of(char character) {
  for (const KindRow& row : kinds)
    if (row.character == character) return row.kind;
  return std::nullopt;
}

bool in_alphabet(char c) { return code_alphabet.find(c) != std::string_view::npos; }

char look_alike(char c) {
  switch (c) {
    case 'B': return '8';
    case 'I':
    case 'L': return '1';
    case 'O':
    case 'Q': return '0';
    case 'S': return '5';
    case 'U': return 'V';
    case 'Z': return '2';
    default: return c;
  }
}

std::optional<std::string> tidied(std::string_view typed) {
  std::string text;
  for (const char c : typed) {
    if (c == ' ' || c == '-') continue;
    const char upper = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    text += look_alike(upper);
    if (text.size() > code_length) return std::nullopt;
  }
  return text;
}

}  // namespace

char kind_character(CodeKind kind) { return row_of(kind).character; }
std::string_view kind_word(CodeKind kind) { return row_of(kind).word; }

CodeKind Code::kind() const { return *kind_of(characters_[0]); }

std::string Code::grouped() const {
  return fmt::format("{} {}", text().substr(0, 4), text().substr(4));
}

Result<Code> make_code(CodeKind kind, std::string_view body) {
  if (body.size() != code_body_length || !std::ranges::all_of(body, in_alphabet))
    return failure(ErrorKind::BadInput,
                   fmt::format("a code has {} characters from {} after its kind, not \"{}\"",
                               code_body_length, code_alphabet, body));
  Code code;
  code.characters_[0] = kind_character(kind);
  std::ranges::copy(body, code.characters_.begin() + 1);
  const auto check = check_character(code.text().substr(0, code_length - 1));
  if (!in_alphabet(*check))
    return failure(ErrorKind::BadInput,
                   fmt::format("the check character of {} could be misread", body));
  code.characters_[code_length - 1] = *check;
  return code;
}

Result<Code> parse_code(std::string_view scanned) {
  const bool shaped = scanned.size() == code_length && std::ranges::all_of(scanned, in_alphabet) &&
                      kind_of(scanned[0]).has_value();
  if (!shaped) return failure(ErrorKind::NotOurs, "This label is not one of ours.");
  if (!check_character_holds(scanned))
    return failure(ErrorKind::BadInput,
                   fmt::format("The check character of {} does not fit: one character is wrong or "
                               "two are swapped. Nothing was opened.",
                               scanned));
  Code code;
  std::ranges::copy(scanned, code.characters_.begin());
  return code;
}

Result<Code> parse_typed_code(std::string_view typed) {
  const auto text = tidied(typed);
  if (text && text->size() < code_length)
    return failure(ErrorKind::BadInput, fmt::format("A code has {} characters; this has {}.",
                                                    code_length, text->size()));
  return parse_code(text.value_or(""));
}

}  // namespace rackside
