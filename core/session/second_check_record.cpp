#include "core/session/second_check_record.h"

namespace wardchalk {

Apart apartIn(const SecondCheck& check) {
  Apart apart;
  for (const EntryCompared& entry : check.entries)
    if (!agrees(entry.agreement)) apart.paths.push_back(entry.path);
  apart.verdict = !check.sameVerdict;
  return apart;
}

}  // namespace wardchalk
