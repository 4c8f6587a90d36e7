#include "core/event/details_json.hpp"

#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;

TEST_CASE("every kind of event survives the file") {
  rc::prop("to JSON and back is the identity", [] {
    const Details details = *any_details(10);
    const auto read = details_from_json(kind_name(details), details_to_json(details));
    RC_CLASSIFY(true, std::string(kind_name(details)));
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == details);
  });
}

TEST_CASE("a kind from a later version is named as such") {
  const auto read = details_from_json("levitated", "{}");
  REQUIRE_FALSE(read);
  CHECK(read.error().kind == ErrorKind::NewerVersion);
}

TEST_CASE("damaged details are refused, not guessed") {
  for (const auto& [kind, json] : std::vector<std::pair<const char*, const char*>>{
           {"offered", "{\"outcome\":"},
           {"offered", R"({"outcome":"nibbled"})"},
           {"offered", R"({"outcome":7})"},
           {"rehoused", "{}"},
           {"rehoused", R"({"to":"T0000000"})"},
           {"measured", R"({"mm":"long"})"},
           {"retracted", R"({"target":"no id"})"},
           {"person added", R"({"name":"Ines","role":"owner"})"},
           {"animal added", R"({"born":"2031-02-30"})"},
           {"looked", R"({"signs":"dark abdomen; levitating"})"}}) {
    INFO(kind << " " << json);
    const auto read = details_from_json(kind, json);
    REQUIRE_FALSE(read);
    CHECK(read.error().kind == ErrorKind::BadInput);
  }
}

TEST_CASE("members from a later version are passed over") {
  const auto read = details_from_json("offered", R"({"outcome":"refused","mood":"grumpy"})");
  REQUIRE(read);
  CHECK(std::get<Offered>(*read).outcome == Outcome::Refused);
}

TEST_CASE("a note that is not UTF-8 does not stop the log") {
  AnimalAdded added{.key = "a\xff"};
  CHECK_NOTHROW(details_to_json(added));
}
