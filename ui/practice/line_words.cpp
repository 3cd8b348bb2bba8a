#include "ui/practice/line_words.h"

#include "core/practice/sessions/lesson_words.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

QString questionWithUnit(const Ask& ask, const Problem& problem) {
  const QString question = held(lineQuestion(ask, problem));
  const QString unit = fromCore(lineUnit(ask));
  return unit.isEmpty() ? question : QStringLiteral("%1  (%2)").arg(question, unit);
}

QString capital(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

QString counted(int count, const QString& one, const QString& many) {
  return count == 1 ? one : many.arg(count);
}

}  // namespace wardchalk::ui
