#include "core/words/field_names.h"

#include <algorithm>
#include <array>

#include "core/medicine/paths.h"
#include "core/words/phrasebook.h"

namespace wardchalk {

namespace {

struct FieldName {
  StaticText path;
  PhraseId name;
};

constexpr std::array names = {
    FieldName{path::title, PhraseId::field_title},
    FieldName{path::age, PhraseId::field_age},
    FieldName{path::sex, PhraseId::field_sex},
    FieldName{path::height, PhraseId::field_height},
    FieldName{path::weight, PhraseId::field_weight},
    FieldName{path::bsa, PhraseId::field_bsa},
    FieldName{path::weightMethod, PhraseId::field_weightMethod},
    FieldName{path::weighed, PhraseId::field_weighed},
    FieldName{path::bornEarly, PhraseId::field_bornEarly},
    FieldName{path::sizeConfirmed, PhraseId::field_sizeConfirmed},
    FieldName{path::medicine, PhraseId::field_medicine},
    FieldName{path::dose, PhraseId::field_dose},
    FieldName{path::route, PhraseId::field_route},
    FieldName{path::schedule, PhraseId::field_schedule},
    FieldName{path::asNeeded, PhraseId::field_asNeeded},
    FieldName{path::maxDosesPerDay, PhraseId::field_maxDosesPerDay},
    FieldName{path::referenceMedicine, PhraseId::field_referenceMedicine},
    FieldName{path::alsoCalled, PhraseId::field_alsoCalled},
    FieldName{path::secondCheckRequired, PhraseId::field_secondCheckRequired},
    FieldName{path::referenceMaxDoses, PhraseId::field_referenceMaxDoses},
    FieldName{path::low, PhraseId::field_low},
    FieldName{path::high, PhraseId::field_high},
    FieldName{path::limitOnly, PhraseId::field_limitOnly},
    FieldName{path::referenceSchedule, PhraseId::field_referenceSchedule},
    FieldName{path::referenceRoute, PhraseId::field_referenceRoute},
    FieldName{path::maxPerDose, PhraseId::field_maxPerDose},
    FieldName{path::maxPerDay, PhraseId::field_maxPerDay},
    FieldName{path::ageFrom, PhraseId::field_ageFrom},
    FieldName{path::ageOver, PhraseId::field_ageOver},
    FieldName{path::ageBelow, PhraseId::field_ageBelow},
    FieldName{path::ageUpTo, PhraseId::field_ageUpTo},
    FieldName{path::weightFrom, PhraseId::field_weightFrom},
    FieldName{path::weightOver, PhraseId::field_weightOver},
    FieldName{path::weightBelow, PhraseId::field_weightBelow},
    FieldName{path::weightUpTo, PhraseId::field_weightUpTo},
    FieldName{path::bsaFrom, PhraseId::field_bsaFrom},
    FieldName{path::bsaOver, PhraseId::field_bsaOver},
    FieldName{path::bsaBelow, PhraseId::field_bsaBelow},
    FieldName{path::bsaUpTo, PhraseId::field_bsaUpTo},
    FieldName{path::maxConcentration, PhraseId::field_maxConcentration},
    FieldName{path::minConcentration, PhraseId::field_minConcentration},
    FieldName{path::minInfusionTime, PhraseId::field_minInfusionTime},
    FieldName{path::maxInfusionRate, PhraseId::field_maxInfusionRate},
    FieldName{path::source, PhraseId::field_source},
    FieldName{path::stockKind, PhraseId::field_stockKind},
    FieldName{path::strength, PhraseId::field_strength},
    FieldName{path::content, PhraseId::field_content},
    FieldName{path::diluent, PhraseId::field_diluent},
    FieldName{path::finalVolume, PhraseId::field_finalVolume},
    FieldName{path::displacement, PhraseId::field_displacement},
    FieldName{path::dividesInto, PhraseId::field_dividesInto},
    FieldName{path::infusionVolume, PhraseId::field_infusionVolume},
    FieldName{path::infusionOver, PhraseId::field_infusionOver},
    FieldName{path::dropFactor, PhraseId::field_dropFactor},
};

}  // namespace

std::string fieldName(std::string_view path) {
  const auto found = std::ranges::find_if(names, [&](const FieldName& one) { return one.path == path; });
  return found == names.end() ? std::string() : say(found->name);
}

}  // namespace wardchalk
