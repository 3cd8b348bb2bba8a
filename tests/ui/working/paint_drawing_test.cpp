#include "ui/working/paint_drawing.h"

#include <QImage>
#include <QPainter>
#include <QTest>
#include <vector>

#include "tests/ui/support/qt_class.h"

namespace wardchalk::ui::test::paint_drawing_test {

namespace {

constexpr int fine = 8;  // points of the picture to one of the drawing
constexpr double begin = 6;

/// A stretch of the stroke that is inked, from where it begins.
struct Dash {
  double from;
  double to;
  [[nodiscard]] double length() const { return to - from; }
};

bool isInked(const QImage& picture, int x) {
  for (int y = 0; y < picture.height(); ++y)
    if (qGray(picture.pixel(x, y)) < 200) return true;
  return false;
}

/// What is seen of a stroke from left to right, on white.
std::vector<Dash> seen(int pattern, double length) {
  Drawing drawing;
  drawing.strokes.push_back({{begin, 20}, {begin + length, 20}, pattern, {}, Stroke().width, 0});
  QImage picture(qRound((length + 2 * begin) * fine), 40 * fine, QImage::Format_RGB32);
  picture.fill(Qt::white);
  QPainter painter(&picture);
  painter.scale(fine, fine);
  paintDrawing(painter, drawing, boardPalette(Scheme::contrastLight), {});
  painter.end();
  std::vector<Dash> dashes;
  bool before = false;
  for (int x = 0; x < picture.width(); ++x) {
    const bool inked = isInked(picture, x);
    const double at = double(x) / fine - begin;
    if (inked && !before) dashes.push_back({at, at});
    if (inked) dashes.back().to = at;
    before = inked;
  }
  return dashes;
}

}  // namespace

/// Strokes through struck units are told apart by their pattern, however short they are.
class PaintDrawingTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void dashesGoFromEndToEnd_data() { addLengths(); }
  void dashesGoFromEndToEnd();
  void everyPatternIsAnother_data() { addLengths(); }
  void everyPatternIsAnother();

 private:
  static void addLengths() {
    QTest::addColumn<double>("length");
    QTest::addRow("over one letter, in small type") << 9.0;
    QTest::addRow("over one letter") << 14.0;
    QTest::addRow("over two") << 25.0;
    QTest::addRow("over a word") << 47.0;
    QTest::addRow("over a word on the board") << 160.0;
  }
};

void PaintDrawingTest::dashesGoFromEndToEnd() {
  QFETCH(double, length);
  const std::vector<Dash> dashes = seen(1, length);
  QVERIFY2(dashes.size() >= 3, qPrintable(QString::number(dashes.size())));
  QVERIFY(dashes.front().from < 0.5);
  QVERIFY(dashes.back().to > length - 1);
  for (std::size_t i = 0; i + 1 < dashes.size(); ++i) {
    const double gap = dashes[i + 1].from - dashes[i].to;
    QVERIFY2(gap >= 1, qPrintable(QString::number(gap)));
    QVERIFY2(dashes[i].length() >= 1.25 * gap, qPrintable(QString::number(dashes[i].length())));
    QVERIFY(qAbs(dashes[i].length() - dashes.front().length()) < 1);
  }
  QVERIFY(dashes.back().length() > dashes.front().length() / 2);
}

void PaintDrawingTest::everyPatternIsAnother() {
  QFETCH(double, length);
  QCOMPARE(seen(0, length).size(), std::size_t(1));
  QCOMPARE(seen(3, length).size(), std::size_t(1));
  const std::vector<Dash> dots = seen(2, length);
  QVERIFY(dots.size() >= 3);
  const double dash = seen(1, length).front().length();
  for (std::size_t i = 0; i + 1 < dots.size(); ++i)
    QVERIFY2(dots[i].length() < Stroke().width * 1.5 && (dash > dots[i].length() * 1.2 || length < 10),
             qPrintable(QStringLiteral("%1 beside %2").arg(dots[i].length()).arg(dash)));
}

WARDCHALK_QT_TEST(PaintDrawingTest)

}  // namespace wardchalk::ui::test::paint_drawing_test

#include "paint_drawing_test.moc"
