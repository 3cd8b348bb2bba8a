#pragma once

#include <string>
#include <vector>

#include "core/check/shown.h"

namespace wardchalk {

/// A question that stands where an amount will, and how it was settled.
struct QuestionWords {
  FindingCode code;
  std::string text;
  std::string settled;  ///< "asked: pharmacist"; empty while it is open
};

/// What stands in the place of the amount to give, line by line; a view sets the first in its largest type.
struct AmountWords {
  std::string measure;              ///< "Measure 3.2 mL"; empty where there is no amount to give
  std::string dose;                 ///< "(80 mg) for one dose"
  std::string when;                 ///< "oral, every 6 h, as needed, no more than 4 doses in 24 h"
  std::string prepare;              ///< "Add 4.6 mL of the diluent named on its label to each vial; …"
  std::string device;               ///< "5 mL oral syringe, marks every 0.2 mL"
  std::string rounding;             ///< "no rounding needed"
  std::string run;                  ///< "Run 50 mL over 30 min: 100 mL/h; this gives 80 mg in 30 min"
  std::string label;                ///< "Label must read: Plover 25 mg in 1 mL"
  std::string none;                 ///< why there is no amount; empty where there is one
  std::vector<QuestionWords> asks;  ///< on ASK, each question; all of them before the amount is shown
  std::string done;                 ///< over an amount that is shown since all are settled
};

/// That the order is as needed, and how many doses may be given in 24 h at most: "as needed, no more than 4
/// doses in 24 h". It stands wherever an amount stands; empty where neither is stated.
[[nodiscard]] std::string limitOfUse(const Case& inputs);

/// The words for the amount as far as it may be seen, or for why there is none.
[[nodiscard]] AmountWords amountWords(const Shown& shown);

/// "asked: pharmacist", "weighed again".
[[nodiscard]] std::string settledText(Answer answer);

}  // namespace wardchalk
