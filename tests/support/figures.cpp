#include "tests/support/figures.h"

#include <algorithm>
#include <stdexcept>

#include "core/number/decimal_text.h"
#include "core/unit/print.h"

namespace wardchalk::test {

namespace {

std::optional<Quantity> amountOf(const std::optional<Limit>& limit) {
  if (!limit) return std::nullopt;
  return limit->amount;
}

std::optional<Quantity> sizeFigure(const Worksheet& sheet, std::string_view name) {
  if (name == "weight" && sheet.weight) return Quantity{sheet.weight->kg, Unit::kg};
  if (name == "bsa" && sheet.bsa) return Quantity{sheet.bsa->m2, Unit::m2};
  if (name == "bsa.unrounded" && sheet.bsa && sheet.bsa->unroundedCut)
    return Quantity{*sheet.bsa->unroundedCut, Unit::m2};
  return std::nullopt;
}

std::optional<Quantity> amountFigure(const Worksheet& sheet, std::string_view name) {
  if (name == "strength" && sheet.strength) return Quantity{sheet.strength->perOne, sheet.strength->drugUnit};
  if (name == "give" && sheet.give) return sheet.give->exact;
  if (name == "measured" && sheet.give && sheet.give->measured)
    return Quantity{*sheet.give->measured, sheet.give->exact.unit};
  return std::nullopt;
}

/// What stands where a word is expected: the verdict's id, a check's status …
std::optional<std::string> word(const Worksheet& sheet, std::string_view name) {
  if (name == "verdict") return std::string(idOf(sheet.verdict));
  if (name == "because") return std::string(sheet.because());
  if (!name.starts_with("check.")) return std::nullopt;
  for (const Check& check : sheet.checks)
    if (idOf(check.id) == name.substr(6)) return std::string(idOf(check.status));
  throw std::runtime_error("no check " + std::string(name));
}

bool hasFinding(const Worksheet& sheet, std::string_view code) {
  if (std::find(findingIds.begin(), findingIds.end(), code) == findingIds.end())
    throw std::runtime_error("no finding " + std::string(code));
  return std::any_of(sheet.findings.begin(), sheet.findings.end(),
                     [&](const Finding& finding) { return idOf(finding.code) == code; });
}

/// flow (mL in an hour) and drops (in a minute), exact or as they can be set.
std::optional<Quantity> rateFigure(const Worksheet& sheet, std::string_view name) {
  if (!sheet.rate) return std::nullopt;
  const std::optional<Flow>& flow =
      name.starts_with("flow") ? sheet.rate->mlPerHour : sheet.rate->dropsPerMinute;
  if (!flow) return std::nullopt;
  if (!name.ends_with(".measured")) return flow->exact;
  if (!flow->measured) return std::nullopt;
  return Quantity{*flow->measured, flow->exact.unit};
}

struct Expectation {
  std::string_view name;
  std::string_view relation;  // "=", "~" or "!="
  std::string_view value;
};

Expectation parse(std::string_view text) {
  for (const std::string_view relation : {"!=", "~", "="}) {
    const std::size_t at = text.find(relation);
    if (at != std::string_view::npos)
      return {text.substr(0, at), relation, text.substr(at + relation.size())};
  }
  throw std::runtime_error("no relation in " + std::string(text));
}

Number numberOf(std::string_view text) {
  const Result<Number> number = readDecimal(text);
  if (!number) throw std::runtime_error("no number: " + std::string(text));
  return *number;
}

std::string describe(const std::optional<Quantity>& quantity) {
  if (!quantity) return "absent";
  return quantity->value.rationalText() + " " + std::string(idOf(quantity->unit)) + " (" +
         printed(*quantity) + ")";
}

bool meets(const std::optional<Quantity>& found, const Expectation& expected) {
  if (expected.value == "absent") return !found;
  const std::size_t space = expected.value.find(' ');
  if (!found ||
      idOf(found->unit) != expected.value.substr(space + 1).substr(0, expected.value.find('/') - space - 1))
    return false;
  const std::string_view digits = expected.value.substr(0, space);
  const std::size_t point = digits.find('.');
  const int decimals = point == std::string_view::npos ? 0 : static_cast<int>(digits.size() - point - 1);
  if (expected.relation == "~") return found->value.rounded(decimals) == numberOf(digits);
  return (found->value == numberOf(digits)) == (expected.relation == "=");
}

}  // namespace

std::optional<Quantity> figure(const Worksheet& sheet, std::string_view name) {
  if (name == "ordered.dose") return sheet.orderedDose;
  if (name == "ordered.day") return sheet.orderedDay;
  if (name == "limit.dose") return amountOf(sheet.limitDose);
  if (name == "limit.day") return amountOf(sheet.limitDay);
  if (name == "low.dose") return sheet.lowDose;
  if (name == "low.day") return sheet.lowDay;
  if (name == "weight" || name.starts_with("bsa")) return sizeFigure(sheet, name);
  if (name == "strength" || name == "give" || name == "measured") return amountFigure(sheet, name);
  if (name.starts_with("flow") || name.starts_with("drops")) return rateFigure(sheet, name);
  throw std::runtime_error("no figure " + std::string(name));
}

std::string unmet(const Worksheet& sheet, std::string_view expectation) {
  const Expectation expected = parse(expectation);
  const bool wanted = expected.relation == "=";
  if (expected.name == "finding")
    return hasFinding(sheet, expected.value) == wanted ? "" : std::string(expectation) + " does not hold";
  if (const auto found = word(sheet, expected.name))
    return (*found == expected.value) == wanted ? "" : std::string(expectation) + " but it is " + *found;
  const std::optional<Quantity> found = figure(sheet, expected.name);
  return meets(found, expected) ? "" : std::string(expectation) + " but it is " + describe(found);
}

}  // namespace wardchalk::test
