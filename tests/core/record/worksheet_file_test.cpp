#include "core/record/worksheet_file.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/check/work_out.h"
#include "core/record/case_entry.h"

// What stands in a worksheet's file only where there is something to say. The golden worksheets hold the
// rest.

namespace wardchalk::worksheet_file_test {
namespace {

nlohmann::json fileOf(std::initializer_list<std::pair<const char*, const char*>> entries) {
  Case inputs;
  for (const auto& [path, text] : entries) EXPECT_TRUE(setEntry(inputs, path, text)) << path;
  std::string json;
  writeWorksheet(json, workOut(inputs, exactRules()), WorksheetExtent::brief);
  return nlohmann::json::parse(json);
}

/// 0.01125 mL/h is the most: the pump's 0 mL/h give nothing, and its 0.1 mL/h too much.
TEST(WorksheetFile, tellsNothingOfWhatARateDeliversThatCannotBeSet) {
  const auto rateOf = [](const char* dose) {
    return fileOf({{"child.weight", "15 kg"},
                   {"order.dose", dose},
                   {"order.route", "intravenous"},
                   {"order.schedule", "continuous"},
                   {"reference.high", dose},
                   {"stock.kind", "liquid"},
                   {"stock.strength", "40 mg/50 mL"}})
        .at("rate");
  };
  const nlohmann::json slow = rateOf("0.01 mcg/kg/min");
  EXPECT_EQ(slow.at("mL_per_h").at("exact"), "9/800");
  EXPECT_FALSE(slow.at("mL_per_h").contains("measured"));
  EXPECT_FALSE(slow.contains("delivers"));
  EXPECT_TRUE(rateOf("4 mcg/kg/min").contains("delivers"));
}

}  // namespace
}  // namespace wardchalk::worksheet_file_test
