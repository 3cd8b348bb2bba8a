#include "ui/shell/second_check_words.h"

#include <QStringList>

#include "core/words/phrasebook.h"
#include "ui/form/field_table.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

QStringList fieldsOf(const Apart& apart) {
  QStringList fields;
  for (const std::string_view path : apart.paths) fields << nameOf(fieldSpec(path));
  return fields;
}

std::string joined(const QStringList& names) { return names.join(QStringLiteral(", ")).toStdString(); }

std::string whatDiffered(const Apart& apart) {
  QStringList what = fieldsOf(apart);
  if (apart.verdict) what << fromCore(say(PhraseId::second_verdict));
  return joined(what);
}

std::string doneWords(const SecondCheckRecord& record) {
  const FirstLook& look = record.firstLook;
  if (record.changedSince) return say(PhraseId::second_differedBefore);
  if (record.differs)
    return say(PhraseId::second_doneDiffers,
               {{"first", record.differs->first},
                {"second", record.differs->second},
                {"entries", joined(fieldsOf(record.apart))},
                {"how", look.alone ? std::string() : say(PhraseId::second_notAlone)}});
  if (!look.alone) return say(PhraseId::second_notIndependent);
  if (look.apart.isNothing()) return say(PhraseId::second_doneSame);
  return say(PhraseId::second_differedAtFirst, {{"what", whatDiffered(look.apart)}});
}

}  // namespace

QString secondCheckWords(const std::optional<SecondCheckRecord>& record) {
  if (!record) return fromCore(say(PhraseId::second_notDone) + ".");
  return fromCore(say(PhraseId::second_when, {{"said", doneWords(*record)}, {"time", record->time}}));
}

}  // namespace wardchalk::ui
