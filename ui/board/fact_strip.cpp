#include "ui/board/fact_strip.h"

#include <QStringList>
#include <utility>

#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// The parts of a fact, each with its comma; a name keeps the commas that stand between its isolating marks.
QStringList partsOf(const QString& text) {
  constexpr char16_t isolate = 0x2068;
  constexpr char16_t endOfIsolate = 0x2069;
  QStringList parts;
  int open = 0;
  qsizetype begin = 0;
  for (qsizetype i = 0; i + 1 < text.size(); ++i) {
    if (text[i] == isolate) ++open;
    if (text[i] == endOfIsolate) --open;
    if (open > 0 || text[i] != u',' || text[i + 1] != u' ') continue;
    parts << text.sliced(begin, i + 1 - begin);
    begin = i + 2;
  }
  parts << text.sliced(begin);
  return parts;
}

class StripSetter {
 public:
  StripSetter(const Metrics& letters, const BoardSizes& sizes, double width)
      : letters_(letters),
        width_(width),
        label_(sizes.px(8)),
        apart_(sizes.px(30)),
        lineGap_(sizes.px(2)),
        space_(textBox(QStringLiteral("n n"), FontRole::tag, Ink::text, letters).width -
               textBox(QStringLiteral("nn"), FontRole::tag, Ink::text, letters).width) {}

  Box whole(const std::vector<Fact>& facts) const {
    std::vector<Box> boxes;
    for (const Fact& fact : facts) boxes.push_back(labelled(fact, held(fact.text)));
    return wrapped(std::move(boxes), apart_, lineGap_, width_);
  }

  Box flowing(const std::vector<Fact>& facts) const {
    std::vector<Box> boxes;
    for (const Fact& fact : facts) {
      const QStringList parts = partsOf(held(fact.text));
      boxes.push_back(labelled(fact, parts.front()));
      for (const QString& part : parts.sliced(1)) boxes.push_back(said(part, width_));
      // what follows stands as far apart as it does between whole facts
      boxes.back().width = std::min(width_, boxes.back().width + apart_ - space_);
    }
    return wrapped(std::move(boxes), space_, lineGap_, width_);
  }

 private:
  Box said(const QString& text, double width) const {
    return paragraph(text, FontRole::tag, Ink::text, letters_, width);
  }

  Box labelled(const Fact& fact, const QString& text) const {
    Box label = textBox(QString::fromStdString(fact.label), FontRole::tag, Ink::quiet, letters_);
    Box beside = said(text, width_ - label.width - label_);
    return row({std::move(label), std::move(beside)}, label_);
  }

  const Metrics& letters_;
  double width_;
  double label_;
  double apart_;
  double lineGap_;
  double space_;
};

}  // namespace

Box factStrip(const std::vector<Fact>& facts, const Metrics& letters, const BoardSizes& sizes, double width) {
  const StripSetter setter(letters, sizes, width);
  Box whole = setter.whole(facts);
  Box flowing = setter.flowing(facts);
  return flowing.height() < whole.height() ? std::move(flowing) : std::move(whole);
}

}  // namespace wardchalk::ui
