#include "core/care/cautions.hpp"

#include "tests/frame.hpp"

using namespace rackside;

// Which genera: Hauke & Herzig 2021, doi:10.1016/j.toxicon.2021.01.001 (subfamilies), Fuchs et al.
// 2014, doi:10.1016/j.toxicon.2013.10.032, and Bertani & Guadanucci 2013, Zoologia 30:403-418
// (urticating hairs in the New World only).

TEST_CASE("a genus with bites on record is of medical importance, a Brachypelma is not") {
  CHECK(cautions_for("Poecilotheria ornata").medically_significant);
  CHECK(cautions_for("Heteroscodra maculata").medically_significant);
  CHECK_FALSE(cautions_for("Brachypelma boehmei").medically_significant);
}

TEST_CASE("urticating hairs are a matter of the New World") {
  CHECK(cautions_for("Theraphosa apophysis").heavy_urticating_hairs);
  CHECK(cautions_for("Ephebopus cyanognathus").urticating_hairs);
  CHECK_FALSE(cautions_for("Ephebopus cyanognathus").heavy_urticating_hairs);
  CHECK_FALSE(cautions_for("Omothymus violaceopes").urticating_hairs);
}

TEST_CASE("the genus is found whatever stands after it and however it is written") {
  CHECK(cautions_for("poecilotheria") == cautions_for("Poecilotheria sp. \"lowland\""));
  CHECK(cautions_for("  Encyocratella olivacea").fast);
}

TEST_CASE("a genus that nobody entered is unknown, and is not called harmless") {
  const Cautions& unknown = cautions_for("Novogenus invented");
  CHECK_FALSE(unknown.known);
  CHECK_FALSE(cautions_for("").known);
  REQUIRE(caution_sentences(unknown).size() == 1);
  CHECK(caution_sentences(unknown)[0].find("does not make it harmless") != std::string::npos);
}

TEST_CASE("every genus in the table names its source") {
  for (const char* genus : {"Poecilotheria", "Atrax", "Davus", "Psalmopoeus", "Selenocosmia"})
    CHECK_FALSE(cautions_for(genus).source.empty());
}

TEST_CASE("the line before an act says the worst, and only where hands or forceps go in") {
  const Cautions& venom = cautions_for("Poecilotheria ornata");
  CHECK(caution_line(venom, Handling::LidClosed).empty());
  CHECK(caution_line(venom, Handling::LidOpen).find("forceps") != std::string::npos);
  CHECK(caution_line(venom, Handling::HandsIn).find("medical help") != std::string::npos);
  const Cautions& hairs = cautions_for("Nhandu tripepii");
  CHECK(caution_line(hairs, Handling::HandsIn).find("never rub") != std::string::npos);
  CHECK(caution_line(Cautions{}, Handling::HandsIn).empty());
}
