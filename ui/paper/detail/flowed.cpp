#include "ui/paper/detail/flowed.h"

#include <algorithm>
#include <utility>

#include "core/words/isolated.h"
#include "ui/theme/text.h"
#include "ui/working/type_measure.h"

namespace wardchalk::ui::detail {

namespace {

struct Word {
  QString text;
  Type type;
};

/// Words of one type on a line, and how far from its beginning.
struct Part {
  Word word;
  double at;
};

/// Sets words into lines. Words of one type that follow one another on a line are set in one go, so that a
/// search finds them together.
class LineSetter {
 public:
  LineSetter(const Metrics& metrics, double width, double hang, Ink ink)
      : metrics_(metrics), width_(width), hang_(hang), ink_(ink) {}

  void add(const Word& word) {
    const double space = used_ > 0 ? advance(QStringLiteral(" "), word.type) : 0;
    if (used_ > 0 && left() + used_ + space + advance(word.text, word.type) > width_) finish();
    QString rest = word.text;
    while (left() + advance(rest, word.type) > width_ && used_ <= 0 && rest.size() > 1) {
      const qsizetype fits = mostThatFits(rest, word.type);
      append(rest.left(fits), word.type);
      finish();
      rest = rest.mid(fits);
    }
    append(rest, word.type);
  }

  Box box() {
    finish();
    return column(std::move(lines_), metrics_.px(1));
  }

 private:
  double left() const { return lines_.empty() ? 0 : hang_; }

  double advance(const QString& text, const Type& type) const {
    return TypeMeasure(type, metrics_.family).width(text);
  }

  qsizetype mostThatFits(const QString& text, const Type& type) const {
    qsizetype fits = 1;
    while (fits < text.size() && left() + advance(text.left(fits + 1), type) <= width_) ++fits;
    return fits;
  }

  void append(const QString& text, const Type& type) {
    const double space = used_ > 0 ? advance(QStringLiteral(" "), type) : 0;
    if (!line_.empty() && line_.back().word.type == type)
      line_.back().word.text += u' ' + text;
    else
      line_.push_back({{text, type}, used_ + space});
    used_ += space + advance(text, type);
  }

  void finish() {
    if (line_.empty()) return;
    Box line;
    for (const Part& part : line_) {
      const QString text = fromCore(isolates_.next(part.word.text.toStdString()));
      Box box = textBox(text, part.word.type, ink_, metrics_);
      const double x = left() + part.at;
      line.width = x + box.width;
      line.above = std::max(line.above, box.above);
      line.below = std::max(line.below, box.below);
      line.drawing.add(std::move(box.drawing), {x, 0});
    }
    lines_.push_back(std::move(line));
    line_.clear();
    used_ = 0;
  }

  const Metrics& metrics_;
  double width_;
  double hang_;
  Ink ink_;
  std::vector<Box> lines_;
  std::vector<Part> line_;
  double used_ = 0;
  IsolatesOfLines isolates_;  // each part of a line is set by itself
};

}  // namespace

Box flowed(const std::vector<Words>& stretches, const Metrics& metrics, double width, double hang, Ink ink) {
  LineSetter setter(metrics, width, hang, ink);
  for (const Words& stretch : stretches)
    for (const QString& word : stretch.text.split(u' ', Qt::SkipEmptyParts)) setter.add({word, stretch.type});
  return setter.box();
}

Box flowed(const QString& text, FontRole role, const Metrics& metrics, double width, Ink ink) {
  return flowed({{text, metrics.type(role)}}, metrics, width, 0, ink);
}

Type typeOf(FontRole role, bool bold, const Metrics& metrics) {
  Type type = metrics.type(role);
  type.bold = bold;
  return type;
}

}  // namespace wardchalk::ui::detail
