#include "core/entry/read_entry.h"

#include <algorithm>
#include <array>

#include "core/entry/read_dose.h"
#include "core/entry/read_schedule.h"
#include "core/entry/read_size.h"
#include "core/entry/read_strength.h"
#include "core/entry/read_words.h"
#include "core/medicine/paths.h"

namespace wardchalk {

namespace {

using Reader = EntryAnswer (*)(std::string_view, const EntrySetting&);

/// A reader without the value that it gives.
template <auto read>
EntryAnswer answer(std::string_view text, const EntrySetting& setting) {
  return answerOf(read(text, setting));
}

template <PerTime time>
EntryAnswer maximumAnswer(std::string_view text, const EntrySetting& setting) {
  return answerOf(readMaximum(text, time, setting));
}

struct FieldReader {
  StaticText path;
  Reader read;
};

constexpr std::array fieldReaders = {
    FieldReader{path::age, answer<readAge>},
    FieldReader{path::weighed, answer<readWeighed>},
    FieldReader{path::height, answer<readHeight>},
    FieldReader{path::weight, answer<readWeight>},
    FieldReader{path::bsa, answer<readSurface>},
    FieldReader{path::dose, answer<readOrderedDose>},
    FieldReader{path::route, answer<readRoute>},
    FieldReader{path::schedule, answer<readOrderSchedule>},
    FieldReader{path::low, answer<readReferenceLow>},
    FieldReader{path::high, answer<readReferenceHigh>},
    FieldReader{path::referenceSchedule, answer<readReferenceSchedule>},
    FieldReader{path::referenceRoute, answer<readRoute>},
    FieldReader{path::maxPerDose, maximumAnswer<PerTime::dose>},
    FieldReader{path::maxPerDay, maximumAnswer<PerTime::day>},
    FieldReader{path::ageFrom, answer<readAge>},
    FieldReader{path::ageOver, answer<readAge>},
    FieldReader{path::ageBelow, answer<readAge>},
    FieldReader{path::ageUpTo, answer<readAge>},
    FieldReader{path::weightFrom, answer<readWeight>},
    FieldReader{path::weightOver, answer<readWeight>},
    FieldReader{path::weightBelow, answer<readWeight>},
    FieldReader{path::weightUpTo, answer<readWeight>},
    FieldReader{path::bsaFrom, answer<readSurface>},
    FieldReader{path::bsaOver, answer<readSurface>},
    FieldReader{path::bsaBelow, answer<readSurface>},
    FieldReader{path::bsaUpTo, answer<readSurface>},
    FieldReader{path::maxConcentration, answer<readConcentration>},
    FieldReader{path::minConcentration, answer<readConcentration>},
    FieldReader{path::minInfusionTime, answer<readTime>},
    FieldReader{path::maxInfusionRate, answer<readRate>},
    FieldReader{path::strength, answer<readStrength>},
    FieldReader{path::content, answer<readContent>},
    FieldReader{path::diluent, answer<readVolume>},
    FieldReader{path::finalVolume, answer<readVolume>},
    FieldReader{path::displacement, answer<readVolume>},
    FieldReader{path::infusionVolume, answer<readVolume>},
    FieldReader{path::infusionOver, answer<readTime>},
    FieldReader{path::dropFactor, answer<readDropFactor>},
};

}  // namespace

std::optional<EntryAnswer> readEntry(std::string_view path, std::string_view text,
                                     const EntrySetting& setting) {
  const auto found = std::find_if(fieldReaders.begin(), fieldReaders.end(),
                                  [&](const FieldReader& one) { return one.path == path; });
  if (found == fieldReaders.end()) return std::nullopt;
  EntryAnswer answer = found->read(text, setting);
  if (answer.refusal) answer.refusal->path = path;
  return answer;
}

}  // namespace wardchalk
