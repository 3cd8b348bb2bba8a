#include "ui/board/board_frame.h"

#include <algorithm>
#include <utility>

#include "ui/board/fact_strip.h"
#include "ui/working/box.h"

namespace wardchalk::ui {

namespace {

class FrameSetter {
 public:
  FrameSetter(const BoardFrameText& text, const BoardSizes& sizes)
      : text_(text),
        sizes_(sizes),
        aside_(sizes.sized(FontRole::tag, std::max(sizes.px(19.5), sizes.leastAside()))),
        left_(sizes.margin()),
        width_(sizes.screen().width() - 2 * sizes.margin()) {}

  BoardFrame frame() {
    const double headBottom = setHeader(setStrip());
    const double footTop = setFooter();
    const double captionTop = setCaption(footTop);
    const double top = headBottom + sizes_.px(18);
    frame_.room = {left_, top, width_, std::max(1.0, captionTop - sizes_.px(10) - top)};
    return std::move(frame_);
  }

 private:
  /// Puts the box with its upper left corner there; the result is its lower edge.
  double put(Box box, double x, double top) {
    const double bottom = top + box.height();
    frame_.drawing.add(std::move(box.drawing), {x, top + box.above});
    return bottom;
  }

  Box foundBox(const QStringList& found) const {
    std::vector<Box> parts;
    parts.push_back(textBox(text_.foundLabel, FontRole::tag, Ink::quiet, aside_));
    for (const QString& one : found)
      parts.push_back(paragraph(one, FontRole::tag, Ink::accent, aside_, width_));
    return wrapped(std::move(parts), sizes_.px(22), sizes_.px(2), width_);
  }

  double setStrip() {
    double bottom = sizes_.px(8);
    if (!text_.facts.empty())
      bottom = put(factStrip(text_.facts, aside_, sizes_, width_), left_, bottom) + sizes_.px(3);
    if (!text_.foundAll.isEmpty()) {
      const double kept = foundBox(text_.foundAll).height();
      put(foundBox(text_.found), left_, bottom);
      bottom += kept;
    }
    frame_.strip = bottom + sizes_.px(8);
    return frame_.strip;
  }

  /// A dot for each page: filled once it is done, a ring in the accent round the one that is shown.
  void setDots(double right, double middle) {
    const double radius = sizes_.px(5);
    const double apart = std::min(sizes_.px(20), width_ * 0.6 / text_.pages);
    for (int i = 0; i < text_.pages; ++i) {
      const double x = right - radius - (text_.pages - 1 - i) * apart;
      const QRectF disc(x - radius, middle - radius, 2 * radius, 2 * radius);
      const bool here = i == text_.page;
      const Ink ink = here ? Ink::accent : Ink::quiet;
      frame_.drawing.areas.push_back({corners(disc), radius,
                                      i <= text_.page ? Area::Fill::solid : Area::Fill::none, ink,
                                      sizes_.px(1.5), ink, 0});
    }
  }

  double setHeader(double top) {
    const Metrics heading = sizes_.sized(FontRole::tag, std::max(sizes_.px(21), sizes_.leastAside()));
    Box said = textBox(text_.heading, FontRole::tag, Ink::quiet, heading);
    const double headTop = top + sizes_.px(16);
    setDots(left_ + width_, headTop + said.height() / 2);
    const double bottom = put(std::move(said), left_, headTop);
    const Metrics large = sizes_.sized(FontRole::question, std::max(sizes_.px(40), sizes_.leastRead()));
    const Metrics beside = sizes_.sized(FontRole::aside, std::max(sizes_.px(30), sizes_.leastRead()));
    std::vector<Box> parts;
    parts.push_back(paragraph(text_.question, FontRole::question, Ink::text, large, width_));
    if (!text_.lookingFor.isEmpty())
      parts.push_back(paragraph(text_.lookingFor, FontRole::aside, Ink::accent, beside, width_));
    return put(wrapped(std::move(parts), sizes_.px(26), 0, width_), left_, bottom);
  }

  double setFooter() {
    Box status = textBox(text_.status, FontRole::tag, Ink::quiet, aside_);
    const double room = width_ - status.width - sizes_.px(30);
    Box caution = paragraph(text_.caution, FontRole::tag, Ink::quiet, aside_, room);
    const double top = sizes_.screen().height() - sizes_.px(8) - std::max(caution.height(), status.height());
    const double right = left_ + width_ - status.width;
    put(std::move(caution), left_, top);
    put(std::move(status), right, top);
    const double y = top - sizes_.px(6);
    frame_.drawing.bars.push_back(
        {Bar::Kind::rule, {left_, y}, {left_ + width_, y}, sizes_.px(1), Ink::edge, 0});
    return y;
  }

  Box captionBox(const QString& caption) const {
    const Metrics metrics = sizes_.sized(FontRole::body, std::max(sizes_.px(31), sizes_.leastRead()));
    return paragraph(caption, FontRole::body, Ink::text, metrics, width_);
  }

  double setCaption(double bottom) {
    double kept = 0;
    for (const QString& caption : text_.captions) kept = std::max(kept, captionBox(caption).height());
    const double top = bottom - sizes_.px(8) - kept;
    if (!text_.caption.isEmpty()) put(captionBox(text_.caption), left_, top);
    return top;
  }

  const BoardFrameText& text_;
  const BoardSizes& sizes_;
  Metrics aside_;
  double left_;
  double width_;
  BoardFrame frame_;
};

}  // namespace

BoardFrame layOutFrame(const BoardFrameText& text, const BoardSizes& sizes) {
  return FrameSetter(text, sizes).frame();
}

}  // namespace wardchalk::ui
