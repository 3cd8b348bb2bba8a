#pragma once

#include <QAbstractSpinBox>
#include <QAccessible>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QStringList>

namespace wardchalk::ui::test {

/// What is wrong with how one thing with a text is read: the runs of its attributes must cover each letter.
inline QString runFault(QWidget& widget, const QString& shown) {
  QAccessibleInterface* one = QAccessible::queryAccessibleInterface(&widget);
  QAccessibleTextInterface* text = one ? one->textInterface() : nullptr;
  const QString name = QLatin1String(widget.metaObject()->className()) + u' ' + widget.objectName();
  if (!text) return name + QStringLiteral(" has no text");
  const int count = text->characterCount();
  if (count != shown.size() || text->text(0, count) != shown)
    return name + QStringLiteral(" reads otherwise");
  for (int at = 0; at < count; ++at) {
    int start = -1, end = -1;
    text->attributes(at, &start, &end);
    if (start != 0 || end != count)
      return QStringLiteral("%1: the run at %2 is %3 to %4 of %5")
          .arg(name)
          .arg(at)
          .arg(start)
          .arg(end)
          .arg(count);
  }
  return {};
}

/// Every line within the widget, with text in it or without, and every box with a number; how many there are
/// is added to `seen`.
inline QStringList lineFaults(QWidget& within, int& seen) {
  QStringList faults;
  QList<QLineEdit*> lines = within.findChildren<QLineEdit*>();
  if (auto* line = qobject_cast<QLineEdit*>(&within)) lines << line;
  for (QLineEdit* line : lines) {
    ++seen;
    const QSignalBlocker quietly(line);
    const QString before = line->text();
    const int longest = line->maxLength();
    for (const QString& text : {QStringLiteral("103"), QStringLiteral("8"), QString()}) {
      line->setText(text.left(longest));
      faults << runFault(*line, line->text());
    }
    line->setText(before);
  }
  for (auto* box : within.findChildren<QAbstractSpinBox*>()) faults << runFault(*box, box->text());
  faults.removeAll(QString());
  return faults;
}

}  // namespace wardchalk::ui::test
