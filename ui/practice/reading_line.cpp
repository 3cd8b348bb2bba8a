#include "ui/practice/reading_line.h"

#include "ui/practice/practice_look.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// As long as what is told to a screen reader waits for the end of typing.
constexpr int pauseMs = 600;
constexpr int keptLines = 2;

}  // namespace

ReadingLine::ReadingLine(QWidget* parent) : PlainLabel(parent) {
  setWordWrap(true);
  setAlignment(Qt::AlignLeft | Qt::AlignTop);
  makeQuiet(this);
  wait_.setSingleShot(true);
  wait_.setInterval(pauseMs);
  connect(&wait_, &QTimer::timeout, this, [this] { setText(told_); });
}

void ReadingLine::show(const LineReading& reading) {
  told_ = readingWords(reading);
  const bool waits = reading.kind == LineReading::Kind::unread;
  setText(waits ? QString() : told_);
  if (waits)
    wait_.start();
  else
    wait_.stop();
}

int ReadingLine::heightForWidth(int width) const {
  return qMax(keptLines * fontMetrics().lineSpacing(), PlainLabel::heightForWidth(width));
}

QString readingWords(const LineReading& reading) {
  switch (reading.kind) {
    case LineReading::Kind::nothing:
      return {};
    case LineReading::Kind::read:
      return ReadingLine::tr("Read as: %1").arg(held(reading.said));
    case LineReading::Kind::unread:
      return ReadingLine::tr("Cannot be read yet: %1").arg(held(reading.said));
  }
  return {};
}

}  // namespace wardchalk::ui
