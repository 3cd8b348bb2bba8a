#include "tests/ui/support/painted_text.h"

#include <QTransform>
#include <QWidget>
#include <algorithm>
#include <map>

namespace wardchalk::ui::test {

namespace {

constexpr int dotsPerInch = 96;

}  // namespace

class PaintedText::Engine : public QPaintEngine {
 public:
  struct Piece {
    double left;
    QString seen;
  };

  Engine() : QPaintEngine(AllFeatures) {}

  bool begin(QPaintDevice*) override { return true; }
  bool end() override { return true; }
  void updateState(const QPaintEngineState& changed) override {
    if (changed.state() & DirtyTransform) transform_ = changed.transform();
  }
  void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
  void drawPath(const QPainterPath&) override {}
  void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
  [[nodiscard]] Type type() const override { return User; }

  void drawTextItem(const QPointF& at, const QTextItem& item) override {
    QString seen = item.text();
    if (item.renderFlags() & QTextItem::RightToLeft) std::reverse(seen.begin(), seen.end());
    const QPointF place = transform_.map(at);
    lines_[qRound(place.y())].push_back({place.x(), seen.replace(QChar::Nbsp, u' ')});
  }

  std::map<int, std::vector<Piece>> lines_;

 private:
  QTransform transform_;
};

PaintedText::PaintedText(QSize size) : size_(size), engine_(std::make_unique<Engine>()) {}
PaintedText::~PaintedText() = default;

QPaintEngine* PaintedText::paintEngine() const { return engine_.get(); }

int PaintedText::metric(PaintDeviceMetric metric) const {
  switch (metric) {
    case PdmWidth:
      return size_.width();
    case PdmHeight:
      return size_.height();
    case PdmWidthMM:
      return size_.width() * 254 / (dotsPerInch * 10);
    case PdmHeightMM:
      return size_.height() * 254 / (dotsPerInch * 10);
    case PdmDpiX:
    case PdmDpiY:
    case PdmPhysicalDpiX:
    case PdmPhysicalDpiY:
      return dotsPerInch;
    case PdmDepth:
      return 32;
    case PdmNumColors:
    case PdmDevicePixelRatio:
      return 1;
    case PdmDevicePixelRatioScaled:
      return static_cast<int>(devicePixelRatioFScale());
    default:
      return QPaintDevice::metric(metric);
  }
}

QStringList PaintedText::lines() const {
  QStringList all;
  for (auto [y, pieces] : engine_->lines_) {
    std::stable_sort(pieces.begin(), pieces.end(),
                     [](const Engine::Piece& a, const Engine::Piece& b) { return a.left < b.left; });
    QString line;
    for (const Engine::Piece& piece : pieces) line += piece.seen;
    all << line;
  }
  return all;
}

QStringList paintedLines(QWidget& widget) {
  PaintedText painted(widget.size());
  widget.render(&painted);
  return painted.lines();
}

}  // namespace wardchalk::ui::test
