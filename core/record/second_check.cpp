#include "core/record/second_check.h"

#include <algorithm>
#include <optional>

#include "core/medicine/paths.h"
#include "core/number/unseen_text.h"
#include "core/record/case_entry.h"
#include "core/record/common_units.h"
#include "core/unit/print.h"
#include "core/words/fact_words.h"
#include "core/words/isolated.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"

namespace wardchalk {

namespace {

std::string_view textAt(std::span<const WrittenEntry> entries, std::string_view path) {
  const auto found = std::ranges::find(entries, path, &WrittenEntry::path);
  return found == entries.end() ? std::string_view() : std::string_view(found->text);
}

/// What an entry means by itself; nothing when it cannot be read.
std::optional<Case> meaningOf(std::string_view path, std::string_view text, Pounds pounds) {
  Case alone;
  if (!text.empty() && !setEntry(alone, path, text)) return std::nullopt;
  return inCommonUnits(std::move(alone), pounds);
}

Agreement agreementOf(std::string_view path, std::string_view first, std::string_view second, Pounds pounds) {
  if (first == second) return Agreement::same;
  const auto one = meaningOf(path, first, pounds);
  const auto other = meaningOf(path, second, pounds);
  if (one && other && *one == *other) return Agreement::writtenDifferently;
  if (first.empty()) return Agreement::onlySecond;
  return second.empty() ? Agreement::onlyFirst : Agreement::differs;
}

/// A figure and how it is told.
struct Figure {
  Quantity value;
  std::string text;
};
using FigureFound = std::optional<Figure>;

Figure told(const Quantity& quantity) { return {quantity, printed(quantity)}; }

FigureFound weightOf(const Worksheet& sheet) {
  if (!sheet.weight) return std::nullopt;
  return told({sheet.weight->kg, Unit::kg});
}

FigureFound surfaceOf(const Worksheet& sheet) {
  if (!sheet.bsa) return std::nullopt;
  const SurfaceFound& found = *sheet.bsa;
  Figure figure = told({found.m2, Unit::m2});
  if (found.fixedDecimals >= 0) figure.text = fixedText(found.m2, found.fixedDecimals) + " m²";
  return figure;
}

FigureFound limitOf(const std::optional<Limit>& limit) {
  if (!limit) return std::nullopt;
  return told(limit->amount);
}

FigureFound quantityOf(const std::optional<Quantity>& quantity) {
  if (!quantity) return std::nullopt;
  return told(*quantity);
}

FigureFound strengthOf(const Worksheet& sheet) {
  if (!sheet.strength) return std::nullopt;
  const StrengthFound& found = *sheet.strength;
  return Figure{{found.perOne, found.drugUnit},
                printed(Strength{{found.perOne, found.drugUnit}, {Number(1), found.in}})};
}

FigureFound amountOf(const Worksheet& sheet) {
  if (!sheet.give) return std::nullopt;
  const Give& give = *sheet.give;
  return told({give.measured.value_or(give.exact.value), give.exact.unit});
}

FigureFound flowOf(const std::optional<Flow>& flow, std::string_view per) {
  if (!flow || !flow->measured) return std::nullopt;
  Figure figure = told({*flow->measured, flow->exact.unit});
  figure.text.append(per);
  return figure;
}

FigureFound figureOf(Outcome outcome, const Worksheet& sheet) {
  const RunRate none;
  const RunRate& rate = sheet.rate ? *sheet.rate : none;
  switch (outcome) {
    case Outcome::weight:
      return weightOf(sheet);
    case Outcome::surface:
      return surfaceOf(sheet);
    case Outcome::safeDose:
      return limitOf(sheet.limitDose);
    case Outcome::safeDay:
      return limitOf(sheet.limitDay);
    case Outcome::orderedDose:
      return quantityOf(sheet.orderedDose);
    case Outcome::orderedDay:
      return quantityOf(sheet.orderedDay);
    case Outcome::strength:
      return strengthOf(sheet);
    case Outcome::amount:
      return amountOf(sheet);
    case Outcome::hourlyRate:
      return flowOf(rate.mlPerHour, "/h");
    case Outcome::drops:
      return flowOf(rate.dropsPerMinute, "/min");
  }
  return std::nullopt;
}

/// Figures that a dose is prepared by.
bool prepares(Outcome outcome) {
  return outcome == Outcome::amount || outcome == Outcome::hourlyRate || outcome == Outcome::drops;
}

/// Figures of a preparation, which are told only once every question is ticked as asked.
bool waitsForAnswers(Outcome outcome, const Worksheet& sheet) {
  return prepares(outcome) && sheet.verdict == VerdictKind::ask;
}

bool areEqual(const Quantity& first, const Quantity& second) {
  const auto value = converted(second.value, second.unit, first.unit);
  return value && *value == first.value;
}

Agreement agreementOf(const FigureFound& first, const FigureFound& second) {
  if (!first) return Agreement::onlySecond;
  if (!second) return Agreement::onlyFirst;
  if (!areEqual(first->value, second->value)) return Agreement::differs;
  return first->text == second->text ? Agreement::same : Agreement::writtenDifferently;
}

/// Figures that differ are told with so many digits that it can be seen.
void tellApart(FigureFound& first, FigureFound& second) {
  if (!first || !second || first->text != second->text || first->value.unit != second->value.unit) return;
  const int digits = digitsApart(first->value.value, second->value.value);
  first->text = printed(first->value, Grouping::commas, digits);
  second->text = printed(second->value, Grouping::commas, digits);
}

OutcomeCompared compareOutcome(Outcome outcome, const Worksheet& first, const Worksheet& second) {
  FigureFound one = figureOf(outcome, first);
  FigureFound other = figureOf(outcome, second);
  const Agreement agreement = agreementOf(one, other);
  if (agreement == Agreement::differs) tellApart(one, other);
  const auto text = [&](const FigureFound& figure, const Worksheet& sheet) {
    if (!figure) return std::string();
    return waitsForAnswers(outcome, sheet) ? say(PhraseId::second_toldOnceAsked) : figure->text;
  };
  return {outcome, text(one, first), text(other, second), agreement};
}

/// The source is written by each in other words, or taken from a list by one of them, and so are the ward's
/// other names of the medicine, and that a second check is wanted. Whether the medicine is the same is a
/// check of each worksheet.
void onlyShowWordsOfList(std::vector<EntryCompared>& entries) {
  for (EntryCompared& entry : entries)
    if ((entry.path == path::source || entry.path == path::alsoCalled ||
         entry.path == path::secondCheckRequired) &&
        !agrees(entry.agreement))
      entry.agreement = Agreement::shownOnly;
}

std::string counted(PhraseId id, long n) {
  return n == 0 ? std::string() : say(id, {{"n", std::to_string(n)}}, n);
}

}  // namespace

bool SecondCheck::agree() const {
  const auto isAgreed = [](const auto& one) { return agrees(one.agreement); };
  return sameVerdict && std::ranges::all_of(entries, isAgreed) && std::ranges::all_of(outcomes, isAgreed);
}

std::vector<EntryCompared> compareEntries(std::span<const WrittenEntry> first,
                                          std::span<const WrittenEntry> second, Pounds pounds) {
  std::vector<EntryCompared> compared;
  for (const CaseEntry& entry : caseEntries()) {
    const std::string_view one = textAt(first, entry.path);
    const std::string_view other = textAt(second, entry.path);
    if (one.empty() && other.empty()) continue;
    compared.push_back(
        {entry.path, std::string(one), std::string(other), agreementOf(entry.path, one, other, pounds)});
  }
  return compared;
}

SecondCheck compareChecks(const Checked& first, const Checked& second) {
  SecondCheck check;
  check.entries = compareEntries(first.entries, second.entries, first.sheet.rules.pounds);
  std::erase_if(check.entries, [](const EntryCompared& entry) { return entry.path == path::title; });
  onlyShowWordsOfList(check.entries);
  for (std::size_t i = 0; i < outcomeCount; ++i) {
    OutcomeCompared outcome = compareOutcome(static_cast<Outcome>(i), first.sheet, second.sheet);
    if (!outcome.first.empty() || !outcome.second.empty()) check.outcomes.push_back(std::move(outcome));
  }
  check.sameVerdict =
      first.sheet.verdict == second.sheet.verdict && first.sheet.because() == second.sheet.because();
  check.firstVerdict = verdictTitle(first.sheet);
  check.secondVerdict = verdictTitle(second.sheet);
  if (!check.sameVerdict && check.firstVerdict == check.secondVerdict) {  // alike for different reasons
    check.firstVerdict.append(". ").append(verdictReason(first.sheet));
    check.secondVerdict.append(". ").append(verdictReason(second.sheet));
  }
  return check;
}

std::string enteredText(std::string_view path, const std::string& typed) {
  Case alone;
  if (typed.empty() || !setEntry(alone, path, typed)) return isolated(withUnseenNamed(typed));
  const std::string read = enteredWords(path, alone);
  return read.empty() ? isolated(typed) : read;
}

std::optional<Disagreement> disagreementOf(const SecondCheck& check) {
  const auto orNothing = [&](const std::string& text) {
    return text.empty() ? say(PhraseId::second_noFigure) : text;
  };
  for (const OutcomeCompared& one : check.outcomes)
    if (!agrees(one.agreement) && !prepares(one.outcome))
      return Disagreement{say(PhraseId::second_namedFigure,
                              {{"name", outcomeName(one.outcome)}, {"figure", orNothing(one.first)}}),
                          orNothing(one.second)};
  for (const EntryCompared& one : check.entries)
    if (!agrees(one.agreement))
      return Disagreement{orNothing(enteredText(one.path, one.first)),
                          orNothing(enteredText(one.path, one.second))};
  return std::nullopt;
}

std::vector<Need> needsBeyond(const Worksheet& other, const Worksheet& sheet) {
  std::vector<Need> beyond;
  for (const Need& need : sheet.needs)
    if (std::ranges::find(other.needs, need.path, &Need::path) == other.needs.end()) beyond.push_back(need);
  return beyond;
}

std::string outcomeName(Outcome outcome) {
  constexpr std::array<PhraseId, outcomeCount> names = {
      PhraseId::outcome_weight,   PhraseId::outcome_surface,     PhraseId::outcome_safeDose,
      PhraseId::outcome_safeDay,  PhraseId::outcome_orderedDose, PhraseId::outcome_orderedDay,
      PhraseId::outcome_strength, PhraseId::outcome_amount,      PhraseId::outcome_hourlyRate,
      PhraseId::outcome_drops};
  return say(names[static_cast<std::size_t>(outcome)]);
}

std::string agreementWords(Agreement agreement) {
  constexpr std::array<PhraseId, 6> words = {
      PhraseId::agreement_same,      PhraseId::agreement_writtenDifferently, PhraseId::agreement_differs,
      PhraseId::agreement_onlyFirst, PhraseId::agreement_onlySecond,         PhraseId::agreement_shownOnly};
  return say(words[static_cast<std::size_t>(agreement)]);
}

std::string secondCheckSummary(const SecondCheck& check) {
  if (check.agree()) return say(PhraseId::second_same);
  const auto apart = [](const auto& list) {
    return static_cast<long>(
        std::ranges::count_if(list, [](const auto& one) { return !agrees(one.agreement); }));
  };
  return say(PhraseId::second_differs,
             {{"entries", counted(PhraseId::second_entriesApart, apart(check.entries))},
              {"results", counted(PhraseId::second_resultsApart, apart(check.outcomes))},
              {"verdict", check.sameVerdict ? std::string() : say(PhraseId::second_verdictApart)}});
}

}  // namespace wardchalk
