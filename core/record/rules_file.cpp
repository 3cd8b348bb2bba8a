#include "core/record/rules_file.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/child/surface_formula.h"
#include "core/entry/read_size.h"
#include "core/entry/read_strength.h"
#include "core/entry/safe_form.h"
#include "core/number/decimal_text.h"
#include "core/number/unseen_text.h"
#include "core/record/date.h"
#include "core/record/file_head.h"
#include "core/unit/conversion.h"
#include "core/unit/print.h"

namespace wardchalk {

namespace {

constexpr FileHead rulesHead{"wardchalk.house-rules", 1};

Refusal refuse(RefusalCode code, std::string_view key, std::string_view typed, std::string suggestion) {
  return {code, shortened(typed), std::move(suggestion), std::string(key)};
}

Refusal withPath(Refusal refusal, std::string_view key) {
  refusal.path = key;
  return refusal;
}

constexpr std::array<std::string_view, 2> poundsWords = {"exact", "trade"};
constexpr std::array<std::string_view, 2> roundToWords = {"marks", "decimals"};
constexpr std::array<std::string_view, 2> referenceScheduleWords = {"ask", "note"};
constexpr std::array<std::string_view, 2> orderScheduleWords = {"needed", "one-dose"};
constexpr std::array<std::string_view, 2> sizeWithoutAgeWords = {"ask", "note"};
constexpr std::array<std::string_view, 2> systemWords = {"metric", "household"};
constexpr std::array<std::string_view, 2> syringeWords = {"oral", "injection"};

/// One of a fixed list of words.
template <typename T, std::size_t size>
Result<Done> takeWord(T& into, std::string_view key, const JsonValue& value,
                      const std::array<std::string_view, size>& words) {
  const auto found = std::find(words.begin(), words.end(), value.text);
  if (value.kind == JsonValue::Kind::text && found != words.end()) {
    into = static_cast<T>(found - words.begin());
    return Done{};
  }
  std::string list;
  for (const std::string_view word : words) list.append(list.empty() ? "" : ", ").append(word);
  return refuse(RefusalCode::wordUnknown, key, value.text, list);
}

Result<Done> takeCount(int& into, std::string_view key, const JsonValue& value, int least, int most) {
  const char* end = value.text.data() + value.text.size();
  int read = 0;
  const auto [stop, error] = std::from_chars(value.text.data(), end, read);
  const std::string range = std::to_string(least) + " to " + std::to_string(most);
  if (value.kind != JsonValue::Kind::number)
    return refuse(RefusalCode::typeWrong, key, value.text, "a whole number, " + range);
  if (value.text.empty()) return refuse(RefusalCode::empty, key, {}, {});
  if (error != std::errc() || stop != end || read < least || read > most)
    return refuse(RefusalCode::valueOutOfRange, key, value.text, range);
  into = read;
  return Done{};
}

/// A count, or the word or null that stands for none.
Result<Done> takeCountOrNone(std::optional<int>& into, std::string_view key, const JsonValue& value,
                             int least, int most) {
  if (value.kind == JsonValue::Kind::null || (value.kind == JsonValue::Kind::text && value.text == "none")) {
    into.reset();
    return Done{};
  }
  int count = 0;
  const Result<Done> taken = takeCount(count, key, value, least, most);
  if (taken) into = count;
  return taken;
}

Result<Done> takePercent(Number& into, std::string_view key, const JsonValue& value, int most = 100) {
  if (value.kind != JsonValue::Kind::number)
    return refuse(RefusalCode::typeWrong, key, value.text, "a number");
  const Result<Number> read = readDecimal(value.text);
  if (!read) return withPath(read.refusal(), key);
  if (*read > Number(most))
    return refuse(RefusalCode::valueOutOfRange, key, value.text, "0 to " + std::to_string(most));
  into = *read;
  return Done{};
}

Result<Done> takeText(std::string& into, std::string_view key, const JsonValue& value) {
  if (value.kind != JsonValue::Kind::text)
    return refuse(RefusalCode::typeWrong, key, value.text, "text in quotation marks");
  if (value.text.size() > 500) return refuse(RefusalCode::tooLong, key, value.text, {});
  if (auto refusal = refusedUnseen(value.text)) return withPath(*refusal, key);
  into = value.text;
  return Done{};
}

/// A day of the calendar, or nothing.
Result<Done> takeDay(std::string& into, std::string_view key, const JsonValue& value) {
  if (value.kind != JsonValue::Kind::text)
    return refuse(RefusalCode::typeWrong, key, value.text, "a day in quotation marks");
  if (!value.text.empty())
    if (const Result<Date> day = readDate(value.text); !day) return withPath(day.refusal(), key);
  into = value.text;
  return Done{};
}

/// Rules are written once and by few: their volumes stand in our spelling and in no other.
bool isStrict(std::string_view text, Unit unit) {
  const std::size_t blank = text.find(' ');
  return blank != std::string_view::npos && text.substr(blank + 1) == idOf(unit);
}

Result<Done> takeVolume(Number& into, std::string_view key, const JsonValue& value) {
  if (value.kind != JsonValue::Kind::text)
    return refuse(RefusalCode::typeWrong, key, value.text, "a volume in quotation marks");
  const EntryResult<Quantity> result = readVolume(value.text);
  if (const auto* unread = std::get_if<UnreadEntry>(&result)) return withPath(unread->refusal, key);
  const auto& read = std::get<ReadEntryAs<Quantity>>(result);
  if (!isStrict(value.text, read.value.unit))
    return withPath(refusalOf(RefusalCode::unitUnknown, value.text, read.safe), key);
  into = *converted(read.value.value, read.value.unit, Unit::mL);
  return Done{};
}

Result<Done> takeSystemOrNone(std::optional<UnitSystem>& into, std::string_view key, const JsonValue& value) {
  if (value.kind == JsonValue::Kind::null || (value.kind == JsonValue::Kind::text && value.text == noRule)) {
    into.reset();
    return Done{};
  }
  std::uint8_t at = 0;
  const Result<Done> taken = takeWord(at, key, value, systemWords);
  if (taken) into = static_cast<UnitSystem>(at + 1);  // after none
  return taken;
}

/// An age in our own spelling, or none.
Result<Done> takeAgeOrNone(std::optional<MixedQuantity>& into, std::string_view key, const JsonValue& value) {
  if (value.kind == JsonValue::Kind::null || (value.kind == JsonValue::Kind::text && value.text == noRule)) {
    into.reset();
    return Done{};
  }
  if (value.kind != JsonValue::Kind::text)
    return refuse(RefusalCode::typeWrong, key, value.text, "a time in quotation marks");
  const EntryResult<MixedQuantity> result = readAge(value.text, fileSetting);
  if (const auto* unread = std::get_if<UnreadEntry>(&result)) return withPath(unread->refusal, key);
  const auto& read = std::get<ReadEntryAs<MixedQuantity>>(result);
  if (read.safe != value.text)
    return withPath(refusalOf(RefusalCode::unitUnknown, value.text, read.safe), key);
  into = read.value;
  return Done{};
}

Result<Done> takeFormula(BsaFormula& into, std::string_view key, const JsonValue& value) {
  std::string list;
  for (const BsaFormula formula :
       {BsaFormula::mosteller, BsaFormula::haycock, BsaFormula::duBois, BsaFormula::gehanGeorge}) {
    const std::string_view id = surfaceFormula(formula).id;
    if (value.kind == JsonValue::Kind::text && value.text == id) {
      into = formula;
      return Done{};
    }
    list.append(list.empty() ? "" : ", ").append(id);
  }
  return refuse(RefusalCode::wordUnknown, key, value.text, list);
}

Result<Done> takeSyringe(Syringe& into, const std::string& path, const JsonValue& value) {
  if (value.kind != JsonValue::Kind::object)
    return refuse(RefusalCode::typeWrong, path, value.text, "an object in braces");
  for (const auto& [key, inner] : value.members) {
    const std::string own = std::string(path).append(".").append(key);
    const Result<Done> taken = key == "holds"   ? takeVolume(into.holdsMl, own, inner)
                               : key == "marks" ? takeVolume(into.marksMl, own, inner)
                               : key == "kind"  ? takeWord(into.kind, own, inner, syringeWords)
                                                : Result<Done>(refuse(RefusalCode::keyUnknown, own, own, {}));
    if (!taken) return taken;
  }
  for (const std::string_view key : {"holds", "marks", "kind"})
    if (!value.member(key)) return refuse(RefusalCode::keyMissing, path, path + "." + std::string(key), {});
  if (into.marksMl > into.holdsMl)
    return refuse(RefusalCode::valueOutOfRange, path + ".marks", value.member("marks")->text,
                  "no more than it holds");
  return Done{};
}

Result<Done> takeSyringes(std::vector<Syringe>& into, std::string_view key, const JsonValue& value) {
  if (value.kind != JsonValue::Kind::list || value.items.empty() || value.items.size() > 50)
    return refuse(RefusalCode::typeWrong, key, value.text, "a list of syringes in brackets");
  std::vector<Syringe> syringes;
  for (std::size_t i = 0; i < value.items.size(); ++i) {
    Syringe syringe{Number(1), Number(1), SyringeKind::oral};
    const std::string place = std::string(key) + "[" + std::to_string(i) + "]";
    if (auto taken = takeSyringe(syringe, place, value.items[i]); !taken) return taken;
    syringes.push_back(syringe);
  }
  into = std::move(syringes);
  return Done{};
}

/// One key of a house-rules file: how it is read and how it is written.
struct RuleKey {
  std::string_view key;
  Result<Done> (*take)(HouseRules&, std::string_view, const JsonValue&);
  void (*write)(JsonWriter&, const HouseRules&);
  JsonValue::Kind kind = JsonValue::Kind::text;
  bool isLeftOut(const HouseRules& rules) const {
    return (key == "weight_older_than" && !rules.weightOlderThan) ||
           (key == "unit_system" && !rules.unitSystem);
  }
};

void writePercent(JsonWriter& writer, const Number& percent) { writer.bare(exactText(percent)); }

void writeCountOr(JsonWriter& writer, const std::optional<int>& count, std::string_view none) {
  if (count)
    writer.number(*count);
  else
    writer.bare(none);
}

std::string millilitres(const Number& value) { return exactText(value) + " mL"; }

void writeSystemOrNone(JsonWriter& writer, const std::optional<UnitSystem>& system) {
  if (system && *system != UnitSystem::none)
    writer.text(systemWords[static_cast<std::size_t>(*system) - 1]);
  else
    writer.bare("null");
}

void writeAgeOrNone(JsonWriter& writer, const std::optional<MixedQuantity>& age) {
  if (age)
    writer.text(safeForm(*age));
  else
    writer.bare("null");
}

void writeSyringes(JsonWriter& writer, const HouseRules& rules) {
  writer.openList();
  for (const Syringe& syringe : rules.syringes) {
    writer.openObject()
        .key("holds")
        .text(millilitres(syringe.holdsMl))
        .key("marks")
        .text(millilitres(syringe.marksMl));
    writer.key("kind").text(syringeWords[static_cast<std::size_t>(syringe.kind)]).closeObject();
  }
  writer.closeList();
}

// clang-format off
using V = const JsonValue&;
using K = std::string_view;
constexpr std::array ruleKeys = {
    RuleKey{"name", [](HouseRules& r, K k, V v) { return takeText(r.name, k, v); }, [](JsonWriter& w, const HouseRules& r) { w.text(r.name); }},
    RuleKey{"pounds", [](HouseRules& r, K k, V v) { return takeWord(r.pounds, k, v, poundsWords); }, [](JsonWriter& w, const HouseRules& r) { w.text(poundsWords[static_cast<std::size_t>(r.pounds)]); }},
    RuleKey{"kilogram_decimals", [](HouseRules& r, K k, V v) { return takeCountOrNone(r.kilogramDecimals, k, v, 0, 6); }, [](JsonWriter& w, const HouseRules& r) { writeCountOr(w, r.kilogramDecimals, "null"); }, JsonValue::Kind::number},
    RuleKey{"bsa_formula", [](HouseRules& r, K k, V v) { return takeFormula(r.bsaFormula, k, v); }, [](JsonWriter& w, const HouseRules& r) { w.text(surfaceFormula(r.bsaFormula).id); }},
    RuleKey{"bsa_decimals", [](HouseRules& r, K k, V v) { return takeCountOrNone(r.bsaDecimals, k, v, 2, 4); }, [](JsonWriter& w, const HouseRules& r) { writeCountOr(w, r.bsaDecimals, "\"none\""); }, JsonValue::Kind::number},
    RuleKey{"round_to", [](HouseRules& r, K k, V v) { return takeWord(r.roundTo, k, v, roundToWords); }, [](JsonWriter& w, const HouseRules& r) { w.text(roundToWords[static_cast<std::size_t>(r.roundTo)]); }},
    RuleKey{"volume_decimals_below_1_mL", [](HouseRules& r, K k, V v) { return takeCount(r.volumeDecimalsBelow1Ml, k, v, 0, 4); }, [](JsonWriter& w, const HouseRules& r) { w.number(r.volumeDecimalsBelow1Ml); }, JsonValue::Kind::number},
    RuleKey{"volume_decimals_from_1_mL", [](HouseRules& r, K k, V v) { return takeCount(r.volumeDecimalsFrom1Ml, k, v, 0, 4); }, [](JsonWriter& w, const HouseRules& r) { w.number(r.volumeDecimalsFrom1Ml); }, JsonValue::Kind::number},
    RuleKey{"rate_decimals", [](HouseRules& r, K k, V v) { return takeCount(r.rateDecimals, k, v, 0, 4); }, [](JsonWriter& w, const HouseRules& r) { w.number(r.rateDecimals); }, JsonValue::Kind::number},
    RuleKey{"ask_below_percent", [](HouseRules& r, K k, V v) { return takePercent(r.askBelowPercent, k, v); }, [](JsonWriter& w, const HouseRules& r) { writePercent(w, r.askBelowPercent); }, JsonValue::Kind::number},
    RuleKey{"ask_low_percent", [](HouseRules& r, K k, V v) { return takePercent(r.askLowPercent, k, v); }, [](JsonWriter& w, const HouseRules& r) { writePercent(w, r.askLowPercent); }, JsonValue::Kind::number},
    RuleKey{"ask_rounding_percent", [](HouseRules& r, K k, V v) { return takePercent(r.askRoundingPercent, k, v, 10); }, [](JsonWriter& w, const HouseRules& r) { writePercent(w, r.askRoundingPercent); }, JsonValue::Kind::number},
    RuleKey{"bsa_differs_percent", [](HouseRules& r, K k, V v) { return takePercent(r.bsaDiffersPercent, k, v); }, [](JsonWriter& w, const HouseRules& r) { writePercent(w, r.bsaDiffersPercent); }, JsonValue::Kind::number},
    RuleKey{"weight_older_than", [](HouseRules& r, K k, V v) { return takeAgeOrNone(r.weightOlderThan, k, v); }, [](JsonWriter& w, const HouseRules& r) { writeAgeOrNone(w, r.weightOlderThan); }},
    RuleKey{"grace_percent", [](HouseRules& r, K k, V v) { return takePercent(r.gracePercent, k, v, 10); }, [](JsonWriter& w, const HouseRules& r) { writePercent(w, r.gracePercent); }, JsonValue::Kind::number},
    RuleKey{"reference_schedule_missing", [](HouseRules& r, K k, V v) { return takeWord(r.referenceScheduleMissing, k, v, referenceScheduleWords); }, [](JsonWriter& w, const HouseRules& r) { w.text(referenceScheduleWords[static_cast<std::size_t>(r.referenceScheduleMissing)]); }},
    RuleKey{"order_schedule_missing", [](HouseRules& r, K k, V v) { return takeWord(r.orderScheduleMissing, k, v, orderScheduleWords); }, [](JsonWriter& w, const HouseRules& r) { w.text(orderScheduleWords[static_cast<std::size_t>(r.orderScheduleMissing)]); }},
    RuleKey{"size_without_age", [](HouseRules& r, K k, V v) { return takeWord(r.sizeWithoutAge, k, v, sizeWithoutAgeWords); }, [](JsonWriter& w, const HouseRules& r) { w.text(sizeWithoutAgeWords[static_cast<std::size_t>(r.sizeWithoutAge)]); }},
    RuleKey{"many_units", [](HouseRules& r, K k, V v) { return takeCount(r.manyUnits, k, v, 1, 100); }, [](JsonWriter& w, const HouseRules& r) { w.number(r.manyUnits); }, JsonValue::Kind::number},
    RuleKey{"smallest_volume", [](HouseRules& r, K k, V v) { return takeVolume(r.smallestVolume.value, k, v); }, [](JsonWriter& w, const HouseRules& r) { w.text(millilitres(r.smallestVolume.value)); }},
    RuleKey{"syringes", [](HouseRules& r, K k, V v) { return takeSyringes(r.syringes, k, v); }, writeSyringes},
    RuleKey{"unit_system", [](HouseRules& r, K k, V v) { return takeSystemOrNone(r.unitSystem, k, v); }, [](JsonWriter& w, const HouseRules& r) { writeSystemOrNone(w, r.unitSystem); }},
    RuleKey{"idle_minutes", [](HouseRules& r, K k, V v) { return takeCount(r.idleMinutes, k, v, 1, 120); }, [](JsonWriter& w, const HouseRules& r) { w.number(r.idleMinutes); }, JsonValue::Kind::number},
    RuleKey{"agreed_by", [](HouseRules& r, K k, V v) { return takeText(r.agreedBy, k, v); }, [](JsonWriter& w, const HouseRules& r) { w.text(r.agreedBy); }},
    RuleKey{"agreed_on", [](HouseRules& r, K k, V v) { return takeDay(r.agreedOn, k, v); }, [](JsonWriter& w, const HouseRules& r) { w.text(r.agreedOn); }},
};
// clang-format on

const RuleKey* findRule(std::string_view key) {
  const auto known = std::ranges::find(ruleKeys, key, &RuleKey::key);
  return known == ruleKeys.end() ? nullptr : &*known;
}

JsonValue textValue(std::string_view text) { return {JsonValue::Kind::text, std::string(text), {}, {}}; }

}  // namespace

Result<Done> setRule(HouseRules& rules, std::string_view key, std::string_view text) {
  const RuleKey* rule = findRule(key);
  if (!rule) return refuse(RefusalCode::keyUnknown, key, key, {});
  JsonValue value = textValue(text);
  if (text != noRule) value.kind = rule->kind;
  return rule->take(rules, key, value);
}

std::string ruleText(const HouseRules& rules, std::string_view key) {
  const RuleKey* rule = findRule(key);
  if (!rule) return {};
  std::string out;
  JsonWriter writer(out);
  rule->write(writer, rules);
  const Result<JsonValue> value = readJson(out);
  return value && value->kind != JsonValue::Kind::null ? value->text : std::string(noRule);
}

Result<Syringe> readSyringe(std::string_view holds, std::string_view marks, SyringeKind kind) {
  JsonValue value;
  value.kind = JsonValue::Kind::object;
  value.members = {{"holds", textValue(holds)},
                   {"marks", textValue(marks)},
                   {"kind", textValue(syringeWords[static_cast<std::size_t>(kind)])}};
  Syringe syringe{Number(1), Number(1), kind};
  if (auto taken = takeSyringe(syringe, "syringes", value); !taken) return taken.refusal();
  return syringe;
}

Result<HouseRules> readRules(std::string_view json) {
  Result<JsonValue> read = readJson(json);
  if (!read) return read.refusal();
  JsonValue file = *std::move(read);
  if (auto head = checkHead(file, rulesHead); !head) return head.refusal();
  std::erase_if(file.members, [](const auto& member) { return isHeadKey(member.name); });
  return readRuleMembers(file);
}

Result<HouseRules> readRuleMembers(const JsonValue& object) {
  if (object.kind != JsonValue::Kind::object)
    return refuse(RefusalCode::typeWrong, {}, object.text, "an object in braces");
  HouseRules rules = exactRules();
  rules.name.clear();
  for (const auto& [key, value] : object.members) {
    const RuleKey* known = findRule(key);
    if (!known) return refuse(RefusalCode::keyUnknown, key, key, {});
    if (auto taken = known->take(rules, key, value); !taken) return taken.refusal();
  }
  return rules;
}

void writeRuleMembers(JsonWriter& writer, const HouseRules& rules) {
  for (const RuleKey& rule : ruleKeys) {
    if (rule.isLeftOut(rules)) continue;
    writer.key(rule.key);
    rule.write(writer, rules);
  }
}

std::string writeRules(const HouseRules& rules) {
  std::string out;
  JsonWriter writer(out);
  writer.openObject();
  writeHead(writer, rulesHead);
  writeRuleMembers(writer, rules);
  writer.closeObject();
  out.push_back('\n');
  return out;
}

}  // namespace wardchalk
