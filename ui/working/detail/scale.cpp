#include "ui/working/detail/scale.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

namespace wardchalk::ui::detail {

/// Six digits and no power of ten, as a dose is written: 1,000,000 and 0.00002.
QString figureText(double value) {
  constexpr int digits = 6;
  const int before = value == 0 ? 1 : static_cast<int>(std::floor(std::log10(std::abs(value)))) + 1;
  const QLocale english(QLocale::English, QLocale::UnitedStates);
  QString text = english.toString(value, 'f', std::clamp(digits - before, 0, 15));
  if (text.contains(u'.')) {
    while (text.endsWith(u'0')) text.chop(1);
    if (text.endsWith(u'.')) text.chop(1);
  }
  return text;
}

Figures figuresTo(double most, int count) {
  const double rough = most / std::max(1, count);
  const double power = std::pow(10.0, std::floor(std::log10(rough)));
  double step = 10 * power;
  for (const double times : {1.0, 2.0, 5.0}) {
    if (times * power * (1 + 1e-9) < rough) continue;
    step = times * power;
    break;
  }
  return {step, std::ceil(most / step - 1e-9) * step};
}

}  // namespace wardchalk::ui::detail
