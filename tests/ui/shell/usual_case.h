#pragma once

#include <QStringList>

namespace wardchalk::ui::test {

/// The usual case as a nurse types it into the fields in their order; an empty one is passed over.
[[nodiscard]] inline QStringList usualCase() {
  const auto text = [](const char* entry) { return QString::fromUtf8(entry); };
  return {text("103 cm"),
          text("17.2 kg"),
          QString(),
          text("Plover"),
          text("oral"),
          text("80 mg/dose"),
          text("every 12 h"),
          QString(),
          text("120 mg/m2/dose"),
          text("every 12 h"),
          QString(),
          text("Bench list, p. 4"),
          QString(),
          QString(),
          text("liquid"),
          text("25 mg in 1 mL")};
}

inline constexpr qsizetype weightPlace = 1;

/// What was typed in it, and what comes out: words that stand nowhere else in the program.
[[nodiscard]] inline QStringList tellTale() {
  const auto text = [](const char* entry) { return QString::fromUtf8(entry); };
  return {text("103"),   text("17.2"), text("Plover"), text("Bench list"), text("120 mg"),      text("80 mg"),
          text("25 mg"), text("0.70"), text("84 mg"),  text("3.2 mL"),     text("SAFE by this")};
}

}  // namespace wardchalk::ui::test
