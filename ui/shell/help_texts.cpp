#include "ui/shell/help_texts.h"

#include <QCoreApplication>

namespace wardchalk::ui {

namespace {

struct Help {
  Q_DECLARE_TR_FUNCTIONS(Help)
};

}  // namespace

QString shortHelpText() {
  return Help::tr(
      "Enter the child, the order, the reference and what is on hand, in the order of the papers. "
      "The working is beside the form; first it checks, then it measures.\n\n"
      "A line is read when you press Enter or leave it. Write it as on the paper, with its unit "
      "(17.2 kg, "
      "q12h, 120 mg/m2/dose); Alt+Down or F4 offers the units that fit. Below the line you see how it was "
      "understood, or "
      "why it cannot be read; Alt+Enter then takes what is offered instead.\n\n"
      "Enter: next line. Shift+Enter: the line before. F5: the form, or the first line that cannot be read. "
      "F6: between form and working; Shift+F6 and Ctrl+F6: a wider form, a narrower one. F7: the flag. F3: a "
      "screen reader says the result again. "
      "F8: every field, also the rarer ones. F9: a second person checks alone. "
      "Ctrl+N: a new child; it cannot be undone.\n\n"
      "SAFE means safe by the reference that was typed in. Checks that could not be made are named on the "
      "flag.");
}

QString aboutText() {
  return Help::
      tr("Wardchalk %1\n\n"
         "Works a child's dose by dimensional analysis, compares it with the reference you enter, and "
         "shows every line.\n\n"
         "For nurses, nursing students and their teachers. Not for parents or patients, and not for "
         "resuscitation.\n\n"
         "It checks only the figures that were typed in. The reference is your own; none is included. Who "
         "the child is, "
         "allergy, other medicines, kidney and liver are not checked. It replaces neither the "
         "order, the "
         "pharmacist, local policy nor an independent second check by another person.\n\n"
         "Nothing about a child is kept unless you save a case. It uses no network.\n\n"
         "Free software, licensed under the Apache License, version 2. It uses Qt %2 (LGPL 3), Boost, "
         "nlohmann "
         "json, CLI11, libcsv (LGPL 2.1) and utf8proc; their licences are installed with it.")
          .arg(QCoreApplication::applicationVersion(), QString::fromLatin1(qVersion()));
}

}  // namespace wardchalk::ui
