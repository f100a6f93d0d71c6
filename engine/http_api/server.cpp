#include "http_api/server.h"

#include "http_api/router.h"
#include "operations/operation.h"

#include <boost/asio.hpp>
#include <boost/beast.hpp>

#include <algorithm>
#include <thread>
#include <vector>

namespace amentum {
namespace {

namespace asio = boost::asio;
namespace beast = boost::beast;
namespace http = beast::http;
using tcp = asio::ip::tcp;

constexpr std::size_t largest_body = 8 * 1024 * 1024;
constexpr std::size_t largest_file_body = 64 * 1024 * 1024; // a recording of 48 MB as base64
constexpr auto idle_limit = std::chrono::seconds(60);

http::response<http::string_body> response_of(const http::request<http::string_body>& request,
                                              const HttpAnswer& answer) {
    http::response<http::string_body> response{static_cast<http::status>(answer.status), request.version()};
    response.set(http::field::content_type, answer.content_type);
    response.set(http::field::cache_control,
                 answer.may_be_kept ? "public, max-age=31536000, immutable" : "no-store");
    response.set("X-Content-Type-Options", "nosniff");
    response.set("Content-Security-Policy",
                 "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:");
    response.keep_alive(request.keep_alive());
    response.body() = answer.body;
    response.prepare_payload();
    if (request.method() == http::verb::head)
        response.body().clear();
    return response;
}

// A page of another site must not be able to write here through the coach's browser: a write is taken only from a
// page of this server (Origin equals Host) or from a program (no Origin) [Rfc6454].
bool from_elsewhere(const http::request<http::string_body>& request) {
    const auto origin = request[http::field::origin];
    if (origin.empty())
        return false;
    const std::string host(request[http::field::host]);
    return std::string(origin) != "http://" + host && std::string(origin) != "https://" + host;
}

// Only an operation that takes a file may be sent one.
std::size_t largest_body_of(std::string_view target) {
    const std::string_view start = "/api/";
    const Operation* operation =
        target.starts_with(start) ? find_operation(std::string(target.substr(start.size()))) : nullptr;
    const bool takes_file =
        operation && std::any_of(operation->fields.begin(), operation->fields.end(),
                                 [](const auto& field) { return field.name == "content"; });
    return takes_file ? largest_file_body : largest_body;
}

asio::awaitable<void> converse(tcp::socket socket, Workplace& workplace, const Serving& serving) {
    beast::tcp_stream stream(std::move(socket));
    beast::flat_buffer buffer;
    boost::system::error_code error;
    for (bool open = true; open;) {
        http::request_parser<http::string_body> parser;
        parser.body_limit(largest_file_body);
        stream.expires_after(idle_limit);
        co_await http::async_read_header(stream, buffer, parser,
                                         asio::redirect_error(asio::use_awaitable, error));
        if (error)
            break;
        parser.body_limit(largest_body_of(parser.get().target()));
        co_await http::async_read(stream, buffer, parser, asio::redirect_error(asio::use_awaitable, error));
        if (error)
            break;
        const auto request = parser.release();
        const HttpRequest plain{std::string(request.method_string()), std::string(request.target()),
                                request.body()};
        const HttpAnswer answer =
            from_elsewhere(request) && request.method() != http::verb::get
                ? HttpAnswer{403, "text/plain; charset=utf-8", "Another site may not write here.\n"}
                : answer_request(workplace, serving.pages_folder, plain);
        if (serving.log)
            serving.log(plain.verb + " " + plain.target.substr(0, plain.target.find('?')) + " " +
                        std::to_string(answer.status));
        auto response = response_of(request, answer);
        open = response.keep_alive();
        co_await http::async_write(stream, response, asio::redirect_error(asio::use_awaitable, error));
        if (error)
            break;
    }
    stream.socket().shutdown(tcp::socket::shutdown_send, error);
}

asio::awaitable<void> accept_all(tcp::acceptor& acceptor, Workplace& workplace, const Serving& serving) {
    for (;;) {
        boost::system::error_code error;
        auto socket = co_await acceptor.async_accept(asio::make_strand(acceptor.get_executor()),
                                                     asio::redirect_error(asio::use_awaitable, error));
        if (error == asio::error::operation_aborted)
            co_return;
        if (error)
            continue; // one failed hand-shake stops nobody else
        const auto executor = socket.get_executor();
        asio::co_spawn(executor, converse(std::move(socket), workplace, serving), asio::detached);
    }
}

Refusal refuse_place(const Serving& serving, const std::string& why) {
    const std::string place = serving.address + ":" + std::to_string(serving.port);
    return {RefusalCode::out_of_range, "Cannot serve on " + place + ": " + why + ".", "port", place,
            "a free port"};
}

} // namespace

Result<Done> serve(Workplace& workplace, const Serving& serving) {
    asio::io_context context(serving.workers);
    boost::system::error_code error;
    const auto address = asio::ip::make_address(serving.address, error);
    if (error)
        return refuse_place(serving, "the address is not an IP address");
    tcp::acceptor acceptor(context);
    const tcp::endpoint endpoint(address, serving.port);
    acceptor.open(endpoint.protocol());
    acceptor.set_option(asio::socket_base::reuse_address(true));
    acceptor.bind(endpoint, error);
    if (!error)
        acceptor.listen(asio::socket_base::max_listen_connections, error);
    if (error)
        return refuse_place(serving, error.message());

    asio::signal_set signals(context, SIGINT, SIGTERM);
    signals.async_wait([&](auto, auto) { context.stop(); });
    asio::co_spawn(context, accept_all(acceptor, workplace, serving), asio::detached);
    if (serving.when_ready)
        serving.when_ready("http://" + serving.address + ":" +
                           std::to_string(acceptor.local_endpoint().port()));
    std::vector<std::jthread> threads;
    for (int i = 1; i < serving.workers; ++i)
        threads.emplace_back([&] { context.run(); });
    context.run();
    return Done{};
}

} // namespace amentum
