#include "ui/working/working_pane.h"

#include <QSignalSpy>
#include <QTest>

#include "core/check/work_out.h"
#include "tests/ui/working/sample_cases.h"
#include "ui/working/amount_widget.h"
#include "ui/working/flag_widget.h"
#include "ui/working/step_card.h"

namespace wardchalk::ui::test {

class WorkingPaneTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void shoots();
};

namespace {

QPalette darkDesktop() {
  QPalette dark;
  dark.setColor(QPalette::Window, QColor(0x2b, 0x2b, 0x2b));
  dark.setColor(QPalette::WindowText, QColor(0xee, 0xee, 0xee));
  dark.setColor(QPalette::Button, QColor(0x3a, 0x3a, 0x3a));
  dark.setColor(QPalette::ButtonText, QColor(0xee, 0xee, 0xee));
  return dark;
}

}  // namespace

void WorkingPaneTest::shoots() {
  const QString folder = qEnvironmentVariable("WARDCHALK_SHOTS");
  if (folder.isEmpty()) QSKIP("no folder for pictures is named");
  for (const SampleCase& each : sampleCases())
    for (const int zoom : {100, 200})
      for (const bool dark : {false, true}) {
        WorkingPane pane;
        if (dark) pane.setPalette(darkDesktop());
        pane.resize(930, 700);
        pane.setZoom(zoom);
        if (each.name == "empty")
          pane.showEmpty();
        else
          pane.show(workOut(each.given, each.rules));
        pane.show();
        QVERIFY(QTest::qWaitForWindowExposed(&pane));
        pane.grab().save(QStringLiteral("%1/pane-%2-%3%4.png")
                             .arg(folder, QString::fromStdString(each.name))
                             .arg(zoom)
                             .arg(dark ? QStringLiteral("-dark") : QString()));
      }
}

}  // namespace wardchalk::ui::test

QTEST_MAIN(wardchalk::ui::test::WorkingPaneTest)
#include "working_pane_test.moc"
