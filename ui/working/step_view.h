#pragma once

#include <QHash>
#include <QString>
#include <QStringList>
#include <vector>

#include "core/unit/quantity.h"
#include "core/working/step.h"

namespace wardchalk::ui {

/// A named place on a comparison's number line.
struct Landmark {
  enum class Kind : std::uint8_t { low, ordered, limit, maximum };
  Kind kind;
  Number value;
  QString label;  ///< "ordered 80 mg"
  friend bool operator==(const Landmark&, const Landmark&) = default;
};

/// One step with every word that stands on its card. The layout engine and the card know no other source of
/// words.
struct StepView {
  Step step;
  int number = 1;            ///< its place in the working, from 1
  QString question;          ///< "What is the safe dose?"
  QString lookingFor;        ///< "looking for mg/dose"; empty for comparisons and measurements
  QString reason;            ///< one line; may be empty
  QString sentence;          ///< the whole step read aloud
  QStringList sums;          ///< "3 ft 5 in = 41 in"
  QString product;           ///< what a chain comes to, before a house rule rounds it: "0.7015 m²"
  bool productExact = true;  ///< whether "=" may stand before it
  QString underRoot;         ///< the number under the root, when one is taken
  bool underRootExact = true;
  QString conclusion;             ///< "84 mg per dose", "0.70 m²", "true"; for a measuring its sentence
  QString rounding;               ///< "2 decimals"; empty when nothing was rounded
  QString left, relation, right;  ///< a comparison's two sides and what stands between: "80 mg", "≤", "84 mg"
  bool judges = true;  ///< false where nothing may be called safe: then "true" stands without its green
  QString leftChain, rightChain;  ///< what the chains beside the sides come to; empty where there is none
  QHash<QString, QString>
      tags;  ///< origin ("reference.high", "step:bsa") to its word ("reference", "step 1")
  std::vector<Landmark> landmarks;  ///< what the number line shows; empty where there is none
  QString unit;                     ///< unit of the number line, or of the syringe
  QString
      leftOver;  ///< the units that a chain with a turned factor leaves; they stand in place of the result
  friend bool operator==(const StepView&, const StepView&) = default;
};

}  // namespace wardchalk::ui
