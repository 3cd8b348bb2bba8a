#include <QApplication>
#include <QPushButton>
#include <QStyleOptionButton>
#include <QTest>

#include "tests/ui/support/desktops.h"
#include "tests/ui/support/qt_class.h"
#include "ui/theme/buttons.h"
#include "ui/theme/colours.h"
#include "ui/theme/contrast.h"
#include "ui/theme/surface.h"
#include "ui/theme/tick_box.h"

namespace wardchalk::ui::test::edges_test {

namespace {

/// Source: WCAG 2.2, 1.4.11.
constexpr double partContrast = 3.0;

/// The side of a box whose edge is not seen against the ground, away from its corners; empty: all four are.
QString unseenSide(const QWidget& page, const QRect& box, const QColor& ground) {
  const QImage seen = const_cast<QWidget&>(page).grab().toImage();
  const QPoint middle = box.center();
  const struct {
    const char* side;
    QPoint from;
    QPoint step;
  } sides[] = {{"left", {box.left(), middle.y() + 3}, {1, 0}},
               {"right", {box.right(), middle.y() + 3}, {-1, 0}},
               {"top", {middle.x() - 3, box.top()}, {0, 1}},
               {"bottom", {middle.x() - 3, box.bottom()}, {0, -1}}};
  for (const auto& [side, from, step] : sides) {
    double most = 0;
    for (int i = 0; i < 3; ++i) most = qMax(most, contrastRatio(seen.pixelColor(from + i * step), ground));
    if (most < partContrast) return QStringLiteral("%1: %2").arg(QLatin1String(side)).arg(most);
  }
  return {};
}

}  // namespace

/// What can be pressed or ticked is seen by its edge, in a desktop's colours and in those of the program.
class EdgesTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void aTickBoxIsSeen_data() { addPalettes("empty", "ticked"); }
  void aTickBoxIsSeen();
  void aButtonIsSeen_data() { addPalettes("usual", "default"); }
  void aButtonIsSeen();
  void aRoomyButtonHasRoomBesideWhateverItSays();

 private:
  static void addPalettes(const char* first, const char* second);
};

void EdgesTest::addPalettes(const char* first, const char* second) {
  QTest::addColumn<QPalette>("colours");
  QTest::addColumn<QString>("kind");
  for (const Desktop& desktop : desktops)
    for (const char* name : {first, second}) {
      const QString kind = QString::fromLatin1(name);
      const QPalette given = paletteOf(desktop);
      QTest::addRow("%s, %s, dialog", desktop.name, name) << given << kind;
      QTest::addRow("%s, %s, window", desktop.name, name) << surfacePalette(given) << kind;
      QTest::addRow("%s, %s, own", desktop.name, name) << ownPalette(desktop.scheme) << kind;
    }
}

void EdgesTest::aTickBoxIsSeen() {
  QFETCH(QPalette, colours);
  QFETCH(QString, kind);
  QWidget page;
  page.setPalette(colours);
  TickBox box(QStringLiteral("alone"), &page);
  box.setChecked(kind == QStringLiteral("ticked"));
  box.setGeometry(10, 10, 200, 40);
  page.resize(240, 60);
  QStyleOptionButton option;
  option.initFrom(&box);
  const QRect tick = box.style()->subElementRect(QStyle::SE_CheckBoxIndicator, &option, &box);
  QCOMPARE(unseenSide(page, tick.translated(box.pos()), colours.color(QPalette::Window)), QString());
}

void EdgesTest::aButtonIsSeen() {
  QFETCH(QPalette, colours);
  QFETCH(QString, kind);
  QWidget page;
  page.setPalette(colours);
  QPushButton* button = roomyButton(QString(), "one", &page, 40);
  button->setDefault(kind == QStringLiteral("default"));
  button->setGeometry(10, 10, 200, 40);
  page.resize(240, 60);
  QCOMPARE(unseenSide(page, button->geometry(), colours.color(QPalette::Window)), QString());
}

void EdgesTest::aRoomyButtonHasRoomBesideWhateverItSays() {
  QWidget page;
  QPushButton* roomy = roomyButton(QStringLiteral("&Leave"), "one", &page, 40);
  for (const QString& said : {QStringLiteral("&Leave"), QStringLiteral("&Leave; that it differs is recorded"),
                              QStringLiteral("No")}) {
    roomy->setText(said);
    QPushButton* plain = plainButton(said, "other", &page, 40);
    QCOMPARE(roomy->sizeHint().width(), plain->sizeHint().width() + 24);
    QCOMPARE(roomy->minimumSizeHint(), roomy->sizeHint());
  }
}

WARDCHALK_QT_TEST(EdgesTest)

}  // namespace wardchalk::ui::test::edges_test

#include "edges_test.moc"
