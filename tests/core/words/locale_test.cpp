// The names and the order of dates, against the Unicode locale data (CLDR) that ICU carries.

#include <unicode/dtptngen.h>
#include <unicode/smpdtfmt.h>

#include <memory>

#include "core/words/dates.hpp"
#include "tests/frame.hpp"

using namespace rackside;

namespace {

struct Tongue {
  DateStyle style;
  const char* locale;
};

const Tongue tongues[] = {
    {DateStyle::DayMonth, "en_GB"}, {DateStyle::MonthDay, "en_US"}, {DateStyle::German, "de_DE"},
    {DateStyle::French, "fr_FR"},   {DateStyle::Spanish, "es_ES"},  {DateStyle::Italian, "it_IT"},
    {DateStyle::Dutch, "nl_NL"},
};

/// How CLDR would write `day` with the fields of `skeleton`, for instance "yMMMd".
class Cldr {
 public:
  Cldr(const char* locale, const char* skeleton) {
    UErrorCode status = U_ZERO_ERROR;
    const icu::Locale where(locale);
    const std::unique_ptr<icu::DateTimePatternGenerator> patterns(
        icu::DateTimePatternGenerator::createInstance(where, status));
    REQUIRE(U_SUCCESS(status));
    format_ = std::make_unique<icu::SimpleDateFormat>(
        patterns->getBestPattern(icu::UnicodeString(skeleton), status), where, status);
    REQUIRE(U_SUCCESS(status));
    format_->setTimeZone(*icu::TimeZone::getGMT());
  }

  [[nodiscard]] std::string operator()(Day day) const {
    icu::UnicodeString text;
    format_->format(std::chrono::duration<double, std::milli>(day.time_since_epoch()).count(),
                    text);
    std::string utf8;
    text.toUTF8String(utf8);
    return utf8;
  }

 private:
  std::unique_ptr<icu::SimpleDateFormat> format_;
};

/// As the program has British dates: no comma after the weekday, and "Sep" as long as its
/// neighbours.
std::string plain(std::string text, DateStyle style) {
  if (style != DateStyle::DayMonth) return text;
  std::erase(text, ',');
  const auto brief = text.find("Sept");
  if (brief != std::string::npos && text.find("September") == std::string::npos)
    text.erase(brief + 3, 1);
  return text;
}

}  // namespace

TEST_CASE("every day of a year is named as the locale data of its language have it") {
  const Day first{std::chrono::year{2031} / 1 / 1};
  const Day earlier = first - std::chrono::days{400};
  for (const auto& [style, locale] : tongues) {
    const Cldr full(locale, "EEEEMMMMd");
    const Cldr full_with_year(locale, "yMMMMEEEEd");
    const Cldr short_weekday(locale, "EEEMMMMd");
    const Cldr brief(locale, "MMMd");
    const Cldr brief_with_year(locale, "yMMMd");
    for (Day day = first; day < first + std::chrono::days{365}; day += std::chrono::days{1}) {
      // CLDR leaves out the ordinal that French has on the first of a month.
      if (style == DateStyle::French &&
          std::chrono::year_month_day{day}.day() == std::chrono::day{1})
        continue;
      INFO(locale);
      REQUIRE(long_day_words(day, style) == plain(full(day), style));
      REQUIRE(weekday_words(day, style) == plain(short_weekday(day), style));
      REQUIRE(on_day_words(day, earlier, style) == "on " + plain(full_with_year(day), style));
      REQUIRE(day_words(day, day, style) == plain(brief(day), style));
      REQUIRE(day_words(day, earlier, style) == plain(brief_with_year(day), style));
    }
  }
}
