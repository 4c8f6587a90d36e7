#include "core/store/own_kiosk.hpp"

#include "core/store/failure.hpp"
#include "core/store/kiosk_lock.hpp"
#include "core/store/opening.hpp"
#include "core/store/sqlite_log.hpp"

namespace rackside {

using namespace store;

Result<void> make_own_kiosk(const std::filesystem::path& log, const KioskId& kiosk) {
  const auto lock = KioskLock::take(log);
  if (!lock) return tl::unexpected(lock.error());
  return guarded([&] {
    const Database database = open_log_file(log, Access::Write, usual_patience);
    Transaction transaction(database);
    Statement introduce = database.prepare("INSERT INTO kiosks (id) VALUES (?)");
    introduce.bind(1, kiosk.value.bytes);
    introduce.run();
    Statement name = database.prepare("UPDATE meta SET value = ? WHERE name = 'kiosk'");
    const std::string id = format_uuid(kiosk.value);
    name.bind(1, id);
    name.run();
    transaction.commit();
  });
}

}  // namespace rackside
