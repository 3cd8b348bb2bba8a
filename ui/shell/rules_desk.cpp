#include "ui/shell/rules_desk.h"

#include <QFileInfo>
#include <QVBoxLayout>

#include "core/record/rules_file.h"
#include "core/record/text_file.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "ui/record/rules_editor.h"
#include "ui/shell/case_document.h"
#include "ui/shell/dialogs.h"
#include "ui/shell/notice_bar.h"
#include "ui/shell/other_windows.h"
#include "ui/shell/settings.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

const QString exactName = QStringLiteral("exact");
const QString classroomName = QStringLiteral("classroom");

QString rulesFilter() { return RulesDesk::tr("House rules (*.json)"); }

}  // namespace

RulesDesk::RulesDesk(const WindowParts& parts, HouseRules& rules, Settings& settings)
    : QObject(parts.window),
      parts_(parts),
      rules_(rules),
      settings_(settings),
      notice_(new NoticeBar("rules-notice")) {
  parts_.notices->addWidget(notice_);
  notice_->offer("rules-notice-close", tr("Understood"), [this] { notice_->quiet(); });
}

void RulesDesk::start() {
  const QString chosen = settings_.rules();
  if (chosen.isEmpty()) return;
  if (chosen == exactName) return use(exactRules());
  if (chosen == classroomName) return use(classroomRules());
  const Result<HouseRules> read = readFile(chosen);
  if (read) return use(*read);
  settings_.setRules({});  // said once; the next start is clean
  use(exactRules());
  notice_->say(fromCore(
      say(PhraseId::rules_unreadable, {{"file", chosen.toStdString()}, {"why", sentence(read.refusal())}})));
}

void RulesDesk::useExact() {
  settings_.setRules(exactName);
  use(exactRules());
}

void RulesDesk::useClassroom() {
  settings_.setRules(classroomName);
  use(classroomRules());
}

Result<HouseRules> RulesDesk::readFile(const QString& file) const {
  const Result<std::string> text = readTextFile(nativePath(file));
  if (!text) return text.refusal();
  return readRules(*text);
}

QString RulesDesk::whyNot(const QString& file, const Refusal& refusal) const {
  return refusedFile(file, refusal);
}

void RulesDesk::openFile() {
  const QString file =
      parts_.dialogs.file(parts_.window, {FileQuestion::open, tr("Open house rules"), rulesFilter(), {}});
  if (file.isEmpty()) return;
  const Result<HouseRules> read = readFile(file);
  if (!read)
    return parts_.dialogs.tell(parts_.window, tr("The house rules were not changed"),
                               whyNot(file, read.refusal()));
  settings_.setRules(QFileInfo(file).absoluteFilePath());
  use(*read);
}

void RulesDesk::use(const HouseRules& rules) {
  notice_->quiet();
  rules_ = rules;
  Q_EMIT changed();
}

bool RulesDesk::save(const HouseRules& rules) {
  const QString file = parts_.dialogs.file(
      parts_.window, {FileQuestion::save, tr("Save the house rules"), rulesFilter(), tr("house-rules.json")});
  if (file.isEmpty()) return false;
  if (const auto written = writeTextFile(nativePath(file), writeRules(rules)); !written) {
    parts_.dialogs.tell(parts_.window, tr("The house rules were not saved"), whyNot(file, written.refusal()));
    return false;
  }
  settings_.setRules(QFileInfo(file).absoluteFilePath());
  use(rules);
  return true;
}

void RulesDesk::edit() {
  auto* editor = new RulesEditor(rules_, parts_.window);
  connect(editor, &RulesEditor::saveWanted, this, [this, editor](const HouseRules& rules) {
    if (save(rules)) editor->close();
  });
  connect(editor, &RulesEditor::useWanted, this, [this, editor](const HouseRules& rules) {
    use(rules);
    editor->close();
  });
  keepWhenCovered(editor, NewChildThen::returns);
  editor->open();
}

}  // namespace wardchalk::ui
