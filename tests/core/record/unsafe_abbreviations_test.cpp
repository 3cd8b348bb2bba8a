#include "core/words/sentences.h"
#include "tests/core/record/refused_entry.h"

// Each abbreviation on the lists of those that have been misread, typed where people type it, is refused and
// answered with the safe form (T02, T07, H30). Where no other name means the same amount (a spoon, a grain)
// nothing is offered, so that no number is left standing beside a unit that it does not belong to.
// Lists: Joint Commission "Do Not Use" list; ISMP List of Error-Prone Abbreviations; both read in copies.

namespace wardchalk::test::unsafe_abbreviations_test {
namespace {

using enum RefusalCode;
using Row = RefusedEntry;

class AnswersAbbreviation : public RefusesEntry {};

TEST_P(AnswersAbbreviation, withTheSafeForm) {
  expectRefused(GetParam());
  Case inputs;
  const auto refusal = setEntry(inputs, GetParam().path, GetParam().text).refusalIfAny();
  ASSERT_TRUE(refusal);
  const std::string said = sentence(*refusal);
  EXPECT_NE(said.find(GetParam().suggestion), std::string::npos) << said;
}

// What is offered is the whole entry, and is itself read.
TEST_P(AnswersAbbreviation, thatIsReadInItsPlace) {
  const Row& row = GetParam();
  if (row.suggestion.empty()) return;
  Case inputs;
  EXPECT_TRUE(setEntry(inputs, row.path, row.suggestion)) << row.suggestion;
}

constexpr const char* dose = "order.dose";
constexpr const char* high = "reference.high";
constexpr const char* strength = "stock.strength";
constexpr const char* schedule = "order.schedule";
constexpr const char* route = "order.route";

INSTANTIATE_TEST_SUITE_P(
    Units, AnswersAbbreviation,
    ::testing::Values(
        Row{"U", dose, "10 U", unitUnsafe, "10 units"}, Row{"U joined", dose, "10U", unitUnsafe, "10 units"},
        Row{"small u", dose, "10 u", unitUnsafe, "10 units"},
        Row{"U per kg", high, "100 U/kg/dose", unitUnsafe, "100 units/kg/dose"},
        Row{"U in a strength", strength, "1000 U/mL", unitUnsafe, "1000 units/mL"},
        Row{"IU", dose, "400 IU", unitUnsafe, "400 units"},
        Row{"iu", dose, "400 iu", unitUnsafe, "400 units"},
        Row{"dotted IU", dose, "400 I.U.", unitUnsafe, "400 units"},
        Row{"micro sign", dose, "50 \u00B5g", unitUnsafe, "50 mcg"},
        Row{"Greek mu", dose, "50 \u03BCg", unitUnsafe, "50 mcg"},
        Row{"micro sign in a rate", high, "5 \u00B5g/kg/min", unitUnsafe, "5 mcg/kg/min"},
        Row{"ug", dose, "50 ug", unitUnsafe, "50 mcg"}, Row{"mcgm", dose, "50 mcgm", unitUnsafe, "50 mcg"},
        Row{"cc", dose, "5 cc", unitUnsafe, "5 mL"}, Row{"CC", dose, "5 CC", unitUnsafe, "5 mL"},
        Row{"cc in a strength", strength, "120 mg/5 cc", unitUnsafe, "120 mg/5 mL"},
        Row{"cc of diluent", "stock.diluent", "5 cc", unitUnsafe, "5 mL"},
        Row{"cc to run", "infusion.volume", "50 cc", unitUnsafe, "50 mL"},
        Row{"gtt", "infusion.drop_factor", "20 gtt/mL", unitUnsafe, "20 drop/mL"},
        Row{"gtts", "infusion.drop_factor", "20 gtts/mL", unitUnsafe, "20 drop/mL"},
        Row{"ng", dose, "100 ng", unitAmbiguous}, Row{"MU", dose, "1.2 MU", unitAmbiguous},
        Row{"milliunits", dose, "500 mU", unitAmbiguous}, Row{"tsp", dose, "1 tsp", unitAmbiguous},
        Row{"tbsp", dose, "1 tbsp", unitAmbiguous}, Row{"gr", dose, "5 gr", unitAmbiguous},
        Row{"full stop", dose, "80 mg.", unitUnknown, "80 mg"},
        Row{"slash d", high, "30 mg/kg/d", perUnclear}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Schedules, AnswersAbbreviation,
    ::testing::Values(
        Row{"QD", schedule, "QD", scheduleLookAlike}, Row{"qd", schedule, "qd", scheduleLookAlike},
        Row{"dotted QD", schedule, "Q.D.", scheduleLookAlike}, Row{"QOD", schedule, "QOD", scheduleLookAlike},
        Row{"dotted qod", schedule, "q.o.d.", scheduleLookAlike},
        Row{"OD", schedule, "OD", scheduleLookAlike}, Row{"dotted od", schedule, "o.d.", scheduleLookAlike},
        Row{"HS", schedule, "HS", scheduleUnsafe}, Row{"qhs", schedule, "qhs", scheduleUnsafe},
        Row{"qn", schedule, "qn", scheduleUnsafe}, Row{"q1d", schedule, "q1d", scheduleLookAlike},
        Row{"EOD", schedule, "EOD", scheduleLookAlike}, Row{"TIW", schedule, "TIW", scheduleUnsafe},
        Row{"BIW", schedule, "BIW", scheduleUnsafe}, Row{"slash d", schedule, "/d", scheduleUnsafe},
        Row{"QD of a reference", "reference.schedule", "QD", scheduleLookAlike},
        Row{"three times, slash d", schedule, "3/d", scheduleUnknown},
        Row{"x3d", schedule, "x3d", scheduleUnsafe}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(Routes, AnswersAbbreviation,
                         ::testing::Values(Row{"SC", route, "SC", wordUnknown, "subcutaneous"},
                                           Row{"SQ", route, "SQ", wordUnknown, "subcutaneous"},
                                           Row{"sc", route, "sc", wordUnknown, "subcutaneous"},
                                           Row{"sub q", route, "sub q", wordUnknown, "subcutaneous"},
                                           Row{"subq", route, "subq", wordUnknown, "subcutaneous"},
                                           Row{"capital subq", route, "SubQ", wordUnknown, "subcutaneous"},
                                           Row{"SC of a reference", "reference.route", "SC", wordUnknown,
                                               "subcutaneous"},
                                           Row{"per os", route, "per os", wordUnknown, "oral"}),
                         NameOfRow());

INSTANTIATE_TEST_SUITE_P(Figures, AnswersAbbreviation,
                         ::testing::Values(Row{"naked point", dose, ".5 mg", barePoint, "0.5 mg"},
                                           Row{"point last", dose, "5. mg", trailingPoint},
                                           Row{"half a tablet as a fraction", "stock.strength",
                                               "1/2 mg/tablet", fraction},
                                           Row{"one half sign", dose, "\u00BD mg", fraction}),
                         NameOfRow());

}  // namespace
}  // namespace wardchalk::test::unsafe_abbreviations_test
