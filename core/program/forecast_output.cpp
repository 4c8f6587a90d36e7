#include "core/program/forecast_output.hpp"

#include <fmt/format.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/words/dates.hpp"

namespace rackside::program {
namespace {

double rounded(double value, double steps) { return std::round(value * steps) / steps; }

std::string after(Day as_of, double days) {
  return format_day(as_of + std::chrono::days{std::lround(days)});
}

std::string next_moult_text(const Forecast& forecast, Day as_of) {
  if (!forecast.moult_expected) return "none expected";
  const auto& q = forecast.next_moult;
  return fmt::format("{} ({} to {})", after(as_of, q[9]), after(as_of, q[0]), after(as_of, q[18]));
}

}  // namespace

std::string forecast_json(const Forecast& forecast, const std::string& key, Day as_of) {
  nlohmann::ordered_json line;
  line["animal"] = key;
  line["as_of"] = format_day(as_of);
  line["state"] = phase_word(forecast.phase);
  line["p_premoult"] = rounded(forecast.p_premoult, 1e5);
  line["p_moulted_unseen"] = rounded(forecast.p_moulted_unseen, 1e5);
  nlohmann::ordered_json quantiles = nlohmann::ordered_json::object();
  for (std::size_t i = 0; i < moult_quantiles; ++i)
    quantiles[fmt::format("{:.2f}", static_cast<double>(i + 1) / (moult_quantiles + 1))] =
        rounded(forecast.next_moult[i], 100);
  line["next_moult"] = std::move(quantiles);
  line["why"] = nlohmann::ordered_json::array();
  for (const Reason& reason : forecast.why)
    line["why"].push_back({{"text", with_days(reason.text, reason.days, as_of, DateStyle::Iso)},
                           {"weight", rounded(reason.weight, 1000)}});
  return line.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

std::string forecast_table_head() {
  return fmt::format("{:<14} {:<26} {:<10} {:>8} {:>7}  {}\n", "animal", "species", "state",
                     "premoult", "unseen", "next moult: middle (nine chances in ten)");
}

std::string forecast_table_row(const Forecast& forecast, const Evidence& evidence, Day as_of) {
  std::string text =
      fmt::format("{:<14} {:<26} {:<10} {:>7.0f}% {:>6.0f}%  {}\n", evidence.key, evidence.species,
                  phase_word(forecast.phase), 100 * forecast.p_premoult,
                  100 * forecast.p_moulted_unseen, next_moult_text(forecast, as_of));
  if (!forecast.why.empty())
    text += fmt::format(
        "{:>15}{}\n", "",
        with_days(forecast.why.front().text, forecast.why.front().days, as_of, DateStyle::Iso));
  for (const std::string& ignored : forecast.ignored)
    text += fmt::format("{:>15}left aside: {}\n", "", ignored);
  return text;
}

}  // namespace rackside::program
