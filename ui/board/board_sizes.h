#pragma once

#include <QSizeF>
#include <QString>

#include "ui/working/metrics.h"

namespace wardchalk::ui {

/// Sizes of letters and lengths on a board that fills a screen, so that it is read from the back of a room.
///
/// The last row is taken to sit six screen heights away (common practice in setting up rooms, no source).
/// What must be read there (question, working, caption) has capitals of at least 16 minutes of arc, and what
/// may be looked up (facts, tags, figures, caution) of at least 10: the least that ISO 9241-3 gives for
/// reading, and the least that is usable at good contrast (as reported by
/// www.pc.ibm.com/ww/healthycomputing/vdc-crf.html; the standard itself was not seen). That is 1/36 and 1/57
/// of the screen's height.
class BoardSizes {
 public:
  /// `larger`: so many times the usual size; margins stay.
  explicit BoardSizes(const QSizeF& screen, const QString& family = {}, double larger = 1);

  [[nodiscard]] const QSizeF& screen() const { return screen_; }
  [[nodiscard]] const QString& family() const { return family_; }

  /// A length that is `length` px on a screen 768 px high, at the usual size.
  [[nodiscard]] double px(double length) const { return larger_ * length * screen_.height() / 768; }
  [[nodiscard]] double margin() const { return 40 * screen_.height() / 768; }

  /// Heights of type in px: the least for what must be read, and for what may be looked up.
  [[nodiscard]] double leastRead() const;
  [[nodiscard]] double leastAside() const;

  /// The scale of a body, as in Metrics: never smaller than the first, not larger than the second.
  [[nodiscard]] double leastScale() const;
  [[nodiscard]] double mostScale() const { return px(3.3); }

  /// Metrics in which text of this role is so many px high.
  [[nodiscard]] Metrics sized(FontRole role, double pixels) const;

 private:
  QSizeF screen_;
  QString family_;
  double larger_;
  double capital_;  ///< height of a capital in a type of 1 px
};

}  // namespace wardchalk::ui
