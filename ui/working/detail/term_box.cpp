#include "ui/working/detail/term_box.h"

#include <algorithm>

#include "core/number/decimal_text.h"
#include "core/unit/print.h"
#include "core/words/unit_words.h"
#include "ui/theme/text.h"
#include "ui/working/type_measure.h"

namespace wardchalk::ui::detail {

namespace {

/// Units as they are written: the same unit twice, unstruck, is one sign with a power (m² twice is m⁴).
struct WrittenUnit {
  QString sign;
  int pair = -1;  ///< which struck pair it belongs to; -1: it stays
};

QString powered(Unit unit, int times, const Number& value) {
  if (times == 1) return fromCore(signFor(unit, value));
  if (unit == Unit::m2) return times == 2 ? QStringLiteral("m⁴") : QStringLiteral("m⁶");
  return fromCore(infoOf(unit).one) + (times == 2 ? QStringLiteral("²") : QStringLiteral("³"));
}

std::vector<WrittenUnit> writtenUnits(const Term& term, const std::vector<int>& pairs) {
  std::vector<WrittenUnit> written;
  for (std::size_t i = 0; i < term.units.size();) {
    const int pair = i < pairs.size() ? pairs[i] : -1;
    std::size_t end = i + 1;
    if (pair < 0)
      while (end < term.units.size() && end - i < 3 && term.units[end] == term.units[i] &&
             (end >= pairs.size() || pairs[end] < 0))
        ++end;
    written.push_back({powered(term.units[i], static_cast<int>(end - i), term.value), pair});
    i = end;
  }
  return written;
}

QString letterOf(int pair) { return QString(QChar(u'a' + pair % 26)); }

/// How far the letter of a struck pair stands under the baseline.
double letterDrop(const Metrics& metrics) {
  const TypeMeasure small(metrics.type(FontRole::letter), metrics.family);
  return small.xHeight() + metrics.px(3) * metrics.chainScale;
}

double letterDepth(const Metrics& metrics) { return letterDrop(metrics) + metrics.px(2); }

/// The unit with the stroke through it and its letter below the baseline, left of the stroke's foot.
Box struckUnit(const WrittenUnit& unit, const Metrics& metrics, int stage) {
  Box box = textBox(unit.sign, FontRole::number, Ink::text, metrics);
  const TypeMeasure font(metrics.type(FontRole::number), metrics.family);
  const double reach = metrics.px(2) * metrics.chainScale;
  const double top = -font.capHeight() - reach;
  Box letter = textBox(letterOf(unit.pair), FontRole::letter, Ink::accent, metrics);
  const double drop = letterDrop(metrics);
  Stroke stroke{{-reach * 0.5, reach * 1.5},
                {box.width + reach, top},
                unit.pair % strokePatterns,
                letterOf(unit.pair),
                std::max(1.2, metrics.px(1.7) * metrics.chainScale),
                stage};
  letter.drawing.setStage(stage);
  box.drawing.strokes.push_back(stroke);
  const double x = box.width + reach;
  box.drawing.add(std::move(letter.drawing), {x, drop});
  box.width = x + letter.width;
  box.below = std::max(box.below, letterDepth(metrics));
  return box;
}

}  // namespace

QString numberText(const Term& term) {
  // A constant of a formula or a conversion is known exactly and stands in full, however many decimals it
  // has.
  const bool known = term.origin.kind == Origin::Kind::constant || term.origin.kind == Origin::Kind::rule;
  if (known && !show(term.value).exact) return fromCore(exactText(term.value, Grouping::commas));
  QString text = fromCore(valueText(term));
  if (text.startsWith(u'≈')) text = QStringLiteral("≈\u00A0") + text.mid(1).trimmed();
  return text;
}

QString termText(const Term& term) {
  QStringList units;
  for (const WrittenUnit& unit : writtenUnits(term, {})) units << unit.sign;
  const QString number = numberText(term);
  return units.isEmpty() ? number : number + QChar(QChar::Nbsp) + units.join(QStringLiteral("\u00A0·\u00A0"));
}

Box termBox(const Term& term, const std::vector<int>& pairs, const Metrics& metrics, int firstStage) {
  const TypeMeasure font(metrics.type(FontRole::number), metrics.family);
  const double space = font.width(QStringLiteral(" "));
  Box box = textBox(numberText(term), FontRole::number, Ink::text, metrics);
  bool first = true;
  for (const WrittenUnit& unit : writtenUnits(term, pairs)) {
    if (!first)
      box = row({std::move(box), textBox(QStringLiteral("·"), FontRole::number, Ink::text, metrics)},
                space * 0.7);
    Box next = unit.pair < 0 ? textBox(unit.sign, FontRole::number, Ink::text, metrics)
                             : struckUnit(unit, metrics, firstStage + unit.pair);
    box = row({std::move(box), std::move(next)}, space * (first ? 1.0 : 0.7));
    first = false;
  }
  box.below = std::max(box.below, letterDepth(metrics));  // alike whether a letter stands here or not
  box.drawing.hits.push_back({box.rect(), fromCore(term.origin.text()), termText(term), 0, true});
  return box;
}

}  // namespace wardchalk::ui::detail
