#include "ui/shell/display_check.h"

#include <QCoreApplication>
#include <QString>
#include <cstdlib>
#include <cstring>
#include <iostream>

#include "core/words/visible_text.h"

namespace wardchalk::ui {

namespace {

constexpr int unusable = 2;
QtMessageHandler before = nullptr;

/// Which display it was, as far as the surroundings name one: " (DISPLAY is :7)".
QString namedDisplay() {
  for (const char* name : {"QT_QPA_PLATFORM", "WAYLAND_DISPLAY", "DISPLAY"})
    if (!qEnvironmentVariableIsEmpty(name))
      return QStringLiteral(" (%1 is %2)").arg(QLatin1String(name), qEnvironmentVariable(name));
  return {};
}

/// What the parts of Qt that look for a display say before it gives up is left out: the sentence says it.
void take(QtMsgType type, const QMessageLogContext& context, const QString& text) {
  if (type == QtFatalMsg) std::_Exit(complainOfNoDisplay());
  const bool ofDisplay = context.category && std::strncmp(context.category, "qt.qpa", 6) == 0;
  if (!ofDisplay && before) before(type, context, text);
}

}  // namespace

DisplayCheck::DisplayCheck() { before = qInstallMessageHandler(take); }

DisplayCheck::~DisplayCheck() { qInstallMessageHandler(before); }

int complainOfNoDisplay() {
  const QString text =
      QCoreApplication::translate(
          "CommandLine",
          "there is no display to open a window on%1. wardchalk-console prints the working in a terminal.")
          .arg(namedDisplay());
  std::cerr << "wardchalk: " << visibleText(text.toStdString()) << std::endl;
  return unusable;
}

}  // namespace wardchalk::ui
