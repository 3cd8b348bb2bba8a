#include "ui/working/detail/scale.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

namespace wardchalk::ui::detail {

QString figureText(double value) {
  return QLocale(QLocale::English, QLocale::UnitedStates).toString(value, 'g', 6);
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
