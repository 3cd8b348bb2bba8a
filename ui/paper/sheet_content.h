#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "core/check/shown.h"
#include "ui/working/step_view.h"

namespace wardchalk::ui {

/// What is known only where a sheet is made.
struct SheetMade {
  QString time;     ///< as printed: "2026-11-25 13:40"
  QString version;  ///< of the program
  /// What was recorded of a second check in the program: "Second check: done independently, same result …".
  /// Empty: not done.
  QString second;
};

struct SheetFact {
  QString label;
  QString text;
};

/// What stands on one of the papers: child, order, reference, stock, infusion.
struct SheetFacts {
  QString heading;
  std::vector<SheetFact> facts;
};

struct SheetQuestion {
  QString text;
  QString settled;  ///< "Settled: asked the pharmacist"; empty while it is open
};

struct SheetFinding {
  Severity severity;
  QString text;
};

/// Every word of the printed sheet. The layout knows no other.
struct SheetContent {
  VerdictKind verdict = VerdictKind::undecided;
  QString title;      ///< "Dose worksheet"
  QString order;      ///< "Plover 80 mg in each dose, oral, every 12 h"
  QString caseTitle;  ///< what the user calls the sheet; may be empty
  QString workedOut;
  QString ownLabel;
  std::vector<SheetFacts> papers;
  QString flag;
  QString reason;
  QString notMade;  ///< the line of the flag, most important first

  /// Empty unless a dose may be prepared from this sheet.
  QString measure;
  QString dose;
  QStringList amountLines;
  QString doNotPrepare;  ///< stands where there is no amount, and on every following page
  QString none;          ///< why there is no amount
  std::vector<SheetQuestion> questions;
  QString askedBy;

  QString findingsHeading;
  std::vector<SheetFinding> findings;
  QString workingHeading;
  QString legend;
  std::vector<StepView> steps;
  QString leftOut;  ///< says that the steps to the amount are left out; may be empty

  QString checksMadeHeading, checksMade;
  QString checksNotMadeHeading, checksNotMade;
  QString rulesHeading, rules;
  QString workedBy, workedWhat;
  QString secondBy;
  QString second;  ///< whether it was done in the program, and what there is to do on paper
  QString signHere;
  QString caution;
  QString program;    ///< "Wardchalk 0.1.0"
  QString pageOfAll;  ///< "page %1 of %2"

  /// Whether an amount stands on the sheet.
  [[nodiscard]] bool printsAmount() const { return !measure.isEmpty(); }
};

/// The whole sheet read aloud: the working as sentences and not as stacked fractions.
[[nodiscard]] QString spokenSheet(const SheetContent& content);

[[nodiscard]] SheetContent sheetContent(const Shown& shown, const SheetMade& made);

}  // namespace wardchalk::ui
