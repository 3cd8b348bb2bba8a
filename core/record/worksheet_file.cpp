#include "core/record/worksheet_file.h"

#include "core/check/usable_volume.h"
#include "core/number/decimal_text.h"
#include "core/record/file_head.h"
#include "core/record/json_writer.h"
#include "core/record/rules_file.h"
#include "core/record/step_file.h"
#include "core/unit/print.h"
#include "core/words/sentences.h"
#include "core/words/stated_words.h"

namespace wardchalk {

namespace {

constexpr FileHead worksheetHead{"wardchalk.worksheet", 1};

void writeQuantityMembers(JsonWriter& writer, const Quantity& quantity) {
  writer.key("exact").text(quantity.value.rationalText()).key("unit").text(idOf(quantity.unit));
  writer.key("shown").text(filed(quantity));
}

void writeQuantity(JsonWriter& writer, std::string_view key, const std::optional<Quantity>& quantity) {
  if (!quantity) return;
  writer.key(key).openObject();
  writeQuantityMembers(writer, *quantity);
  writer.closeObject();
}

void writeSizes(JsonWriter& writer, const Worksheet& sheet) {
  if (sheet.weight) writeQuantity(writer, "weight", Quantity{sheet.weight->kg, Unit::kg});
  if (!sheet.bsa) return;
  const SurfaceFound& bsa = *sheet.bsa;
  writer.key("bsa").openObject();
  if (bsa.unroundedCut) writer.key("unrounded").text(fixedText(*bsa.unroundedCut, 6) + "...");
  writer.key("exact").text(bsa.m2.rationalText()).key("unit").text("m2");
  const std::string shown =
      bsa.fixedDecimals >= 0 ? fixedText(bsa.m2, bsa.fixedDecimals) : show(bsa.m2).marked();
  writer.key("shown")
      .text(shown + " m2")
      .key("from")
      .text(bsa.charted ? "charted" : "computed")
      .closeObject();
}

void writeSchedule(JsonWriter& writer, std::string_view key, const std::optional<Schedule>& schedule) {
  if (!schedule || schedule->isContinuous()) return;
  writer.key(key)
      .openList()
      .text(schedule->fewest.rationalText())
      .text(schedule->most.rationalText())
      .closeList();
}

void writeSchedules(JsonWriter& writer, const Case& given) {
  const auto stated = [](const std::optional<Schedule>& schedule) {
    return schedule && !schedule->isContinuous();
  };
  if (!stated(given.order.schedule) && !stated(given.reference.schedule)) return;
  writer.key("doses_per_day").openObject();
  writeSchedule(writer, "ordered", given.order.schedule);
  writeSchedule(writer, "reference", given.reference.schedule);
  writer.closeObject();
}

void writeLimit(JsonWriter& writer, std::string_view key, const std::optional<Limit>& limit) {
  if (!limit) return;
  writer.key(key).openObject();
  writeQuantityMembers(writer, limit->amount);
  writer.key("set_by").text(idOf(limit->setBy)).closeObject();
}

void writeDoses(JsonWriter& writer, const Worksheet& sheet) {
  if (sheet.orderedDose || sheet.orderedDay) {
    writer.key("ordered").openObject();
    writeQuantity(writer, "dose", sheet.orderedDose);
    writeQuantity(writer, "day", sheet.orderedDay);
    writer.closeObject();
  }
  if (!sheet.limitDose && !sheet.limitDay && !sheet.lowDose && !sheet.lowDay) return;
  writer.key("limit").openObject();
  writeLimit(writer, "dose", sheet.limitDose);
  writeLimit(writer, "day", sheet.limitDay);
  writeQuantity(writer, "low_dose", sheet.lowDose);
  writeQuantity(writer, "low_day", sheet.lowDay);
  writer.closeObject();
}

std::string comparedForFile(const Stated& compared, int significant) {
  if (const auto* quantity = std::get_if<Quantity>(&compared)) return filed(*quantity, significant);
  return filedStated(compared);
}

void writeCheck(JsonWriter& writer, const Check& check) {
  writer.openObject().key("id").text(idOf(check.id)).key("status").text(idOf(check.status));
  if (check.why && !check.isMade()) writer.key("why").text(idOf(*check.why));
  if (check.isMade()) {
    const auto* value = std::get_if<Quantity>(&check.value);
    const auto* limit = std::get_if<Quantity>(&check.limit);
    const int significant = value && limit ? digitsApart(value->value, limit->value) : 4;
    writer.member("value", comparedForFile(check.value, significant));
    writer.member("limit", comparedForFile(check.limit, significant));
    if (check.ratio) writer.key("percent").text(withoutThousands(percentText(*check.ratio, Number(1))));
  }
  writer.closeObject();
}

void writeFinding(JsonWriter& writer, const Finding& finding, WorksheetExtent extent) {
  writer.openObject().key("code").text(idOf(finding.code)).key("severity").text(idOf(finding.severity));
  if (finding.check) writer.key("check").text(idOf(*finding.check));
  writer.member("field", finding.field);
  writer.key("arguments").openObject();
  for (const Argument& argument : finding.arguments) writer.key(argument.name).text(filedArgument(argument));
  writer.closeObject();
  if (extent == WorksheetExtent::whole) writer.key("text").text(sentence(finding));
  writer.closeObject();
}

void writeJudgement(JsonWriter& writer, const Worksheet& sheet, WorksheetExtent extent) {
  writer.key("checks").openList();
  for (const Check& check : sheet.checks) writeCheck(writer, check);
  writer.closeList().key("findings").openList();
  for (const Finding& finding : sheet.findings) writeFinding(writer, finding, extent);
  writer.closeList().key("needs").openList();
  for (const Need& need : sheet.needs) {
    writer.openObject().key("path").text(need.path);
    writer.key("for").text(need.forWhat == Need::For::verdict ? "verdict" : "amount").closeObject();
  }
  writer.closeList();
}

void writeStrength(JsonWriter& writer, const Worksheet& sheet) {
  if (!sheet.strength) return;
  const StrengthFound& strength = *sheet.strength;
  const std::string unit = std::string(idOf(strength.drugUnit)).append("/").append(idOf(strength.in));
  writer.key("strength")
      .openObject()
      .key("exact")
      .text(strength.perOne.rationalText())
      .key("unit")
      .text(unit);
  writer.key("shown")
      .text(show(strength.perOne).marked() + " " + unit)
      .key("from")
      .text(idOf(strength.from))
      .closeObject();
}

void writeDevice(JsonWriter& writer, const Give& give) {
  if (!give.syringe) return;
  const Syringe& syringe = *give.syringe;
  writer.key("device").openObject().key("holds").text(filed(Quantity{syringe.holdsMl, Unit::mL}));
  writer.key("marks").text(filed(Quantity{syringe.marksMl, Unit::mL}));
  writer.key("kind").text(syringe.kind == SyringeKind::oral ? "oral" : "injection");
  writer.key("count").number(give.syringes).closeObject();
}

void writePair(JsonWriter& writer, const Give& give) {
  if (!give.pair) return;
  const SyringePair& pair = *give.pair;
  const auto inMl = [](const Number& mL) { return filed(Quantity{mL, Unit::mL}); };
  writer.key("pair").openObject().key("full").text(inMl(pair.full.holdsMl)).key("rest").openObject();
  writer.key("measured").text(exactText(pair.rest)).key("holds").text(inMl(pair.of.holdsMl));
  writer.key("marks")
      .text(inMl(pair.of.marksMl))
      .closeObject()
      .key("measured")
      .text(exactText(*give.measured));
  writer.key("percent_change").text(withoutThousands(plainPercent(*give.percentChange))).closeObject();
}

void writePrepare(JsonWriter& writer, const Give& give) {
  if (!give.prepare) return;
  const Prepare& prepare = *give.prepare;
  writer.key("prepare").openObject();
  if (prepare.add) writer.key("add").text(filed(*prepare.add));
  if (prepare.makes) writer.key("makes").text(filed(*prepare.makes));
  const std::string unit =
      std::string(idOf(prepare.strength.drugUnit)).append("/").append(idOf(prepare.strength.in));
  writer.key("strength").text(show(prepare.strength.perOne).marked() + " " + unit).closeObject();
}

void writeGive(JsonWriter& writer, const Worksheet& sheet) {
  if (!sheet.give) return;
  const Give& give = *sheet.give;
  writer.key("give")
      .openObject()
      .key("exact")
      .text(give.exact.value.rationalText())
      .key("unit")
      .text(idOf(give.exact.unit));
  if (give.measured) writer.key("measured").text(exactText(*give.measured));
  writeQuantity(writer, "dose_given", give.doseGiven);
  if (give.measured) writer.key("percent_change").text(withoutThousands(plainPercent(*give.percentChange)));
  if (!give.neighbours.empty()) {
    writer.key("neighbours").openList();
    for (const Number& neighbour : give.neighbours) writer.text(exactText(neighbour));
    writer.closeList();
  }
  writeDevice(writer, give);
  writePair(writer, give);
  writePrepare(writer, give);
  if (give.containers) writer.key("containers").number(*give.containers);
  if (give.afterAsking) writer.key("after_asking").bare("true");
  if (sheet.given.reference.secondCheckRequired) writer.key("after_second_check").bare("true");
  writer.closeObject();
}

void writeFlow(JsonWriter& writer, std::string_view key, const std::optional<Flow>& flow) {
  if (!flow) return;
  writer.key(key).openObject().key("exact").text(flow->exact.value.rationalText());
  if (flow->measured) {
    writer.key("measured").text(exactText(*flow->measured));
    writer.key("percent_change").text(withoutThousands(plainPercent(flow->percentChange)));
  }
  writer.closeObject();
}

void writeDelivered(JsonWriter& writer, const std::optional<Delivered>& delivered) {
  if (!delivered) return;
  writer.key("delivers").openObject();
  if (delivered->over) {
    writeQuantityMembers(writer, delivered->amount);
    writeQuantity(writer, "over", delivered->over);
  } else {
    std::string unit(idOf(delivered->amount.unit));
    for (const Unit per : delivered->per) unit.append("/").append(idOf(per));
    writer.key("exact").text(delivered->amount.value.rationalText()).key("unit").text(unit);
    writer.key("shown").text(show(delivered->amount.value).marked() + " " + unit);
  }
  writer.closeObject();
}

void writeRemedy(JsonWriter& writer, const Worksheet& sheet) {
  if (!sheet.remedy) return;
  const auto write = [&](std::string_view key, const std::optional<Quantity>& quantity) {
    if (quantity) writer.key(key).text(filed(*quantity));
  };
  writer.key("as_prepared").openObject();
  write("volume_at_least", sheet.remedy->leastVolume);
  write("volume_at_most", sheet.remedy->greatestVolume);
  write("over_at_least", sheet.remedy->leastTime);
  writer.closeObject();
}

void writeRate(JsonWriter& writer, const Worksheet& sheet) {
  if (sheet.rate) {
    writer.key("rate").openObject();
    writeFlow(writer, "mL_per_h", sheet.rate->mlPerHour);
    writeFlow(writer, "drops_per_min", sheet.rate->dropsPerMinute);
    writeDelivered(writer, sheet.rate->delivered);
    if (sheet.rate->afterAsking) writer.key("after_asking").bare("true");
    if (sheet.given.reference.secondCheckRequired) writer.key("after_second_check").bare("true");
    writer.closeObject();
  }
  if (!sheet.minimumVolume) return;
  writer.key("volume").openObject();
  writer.key("minimum").openObject().key("exact").text(sheet.minimumVolume->value.rationalText());
  writer.key("unit").text(idOf(sheet.minimumVolume->unit));
  writer.key("shown").text(filed({roundedUpVolume(sheet.minimumVolume->value), Unit::mL})).closeObject();
  writer.closeObject();
}

}  // namespace

WorksheetWriter::WorksheetWriter(const HouseRules& rules, WorksheetExtent extent) : extent_(extent) {
  if (extent == WorksheetExtent::brief) return;
  JsonWriter writer(rules_);
  writer.openObject();
  writeRuleMembers(writer, rules);
  writer.closeObject();
}

void WorksheetWriter::write(std::string& out, const Worksheet& sheet) const {
  const bool whole = extent_ == WorksheetExtent::whole;
  JsonWriter writer(out);
  writer.openObject();
  writeHead(writer, worksheetHead);
  writer.member("title", sheet.given.title);
  if (whole) writer.key("rules").bare(rules_);
  writer.key("verdict").text(idOf(sheet.verdict)).member("because", sheet.because());
  if (whole) writer.member("reason", verdictReason(sheet));
  writeSizes(writer, sheet);
  writeSchedules(writer, sheet.given);
  writeDoses(writer, sheet);
  writeJudgement(writer, sheet, extent_);
  writeStrength(writer, sheet);
  writeGive(writer, sheet);
  writeRate(writer, sheet);
  writeRemedy(writer, sheet);
  if (whole) writeSteps(writer, sheet);
  writer.closeObject();
}

void writeWorksheet(std::string& out, const Worksheet& sheet, WorksheetExtent extent) {
  WorksheetWriter(sheet.rules, extent).write(out, sheet);
}

}  // namespace wardchalk
