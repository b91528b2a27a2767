-- A session of a designer, carried out by Neovim's own client (0.7 and later). What came of each step goes to a file, for the test.
local out = {}
local source, result = vim.env.SESSION_SOURCE, vim.env.SESSION_RESULT

local function finish(err)
  out.error = err
  vim.fn.writefile({ vim.json.encode(out) }, result)
  vim.cmd(err and 'cquit!' or 'qall!')
end

local function session()
  vim.o.hidden = true
  vim.cmd('edit ' .. vim.fn.fnameescape(source))
  local buf = vim.api.nvim_get_current_buf()
  local id = vim.lsp.start_client({ name = 'ovillo', cmd = { vim.env.SESSION_SERVER }, cmd_env = { SERVE_LSP = '1' }, root_dir = vim.fn.fnamemodify(source, ':h') })
  assert(vim.lsp.buf_attach_client(buf, id), 'not attached')

  -- What the server says of this client and of the document is waited for, never slept for.
  local published = 0
  local show = vim.lsp.handlers['textDocument/publishDiagnostics']
  vim.lsp.handlers['textDocument/publishDiagnostics'] = function(...)
    published = published + 1
    return show(...)
  end
  local client = vim.lsp.get_client_by_id(id)
  local function waited(what, ready) assert(vim.wait(20000, ready, 5), what .. ' does not come') end
  local function after(change)
    local before = published
    change()
    waited('publishDiagnostics', function() return published > before end)
    local found = {}
    for _, d in ipairs(vim.diagnostic.get(buf)) do
      if d.severity == vim.diagnostic.severity.ERROR then
        table.insert(found, { line = d.lnum + 1, from = d.col, to = d.end_col, code = d.code, message = d.message })
      end
    end
    return found
  end
  local function lineOf(text)
    for i, line in ipairs(vim.api.nvim_buf_get_lines(buf, 0, -1, true)) do
      local at = line:find(text, 1, true)
      if at then return i, at - 1 end
    end
    error('no line with ' .. text)
  end
  local function cursor(text, more)
    local line, at = lineOf(text)
    vim.api.nvim_win_set_cursor(0, { line, at + (more or 0) })
  end
  local function ask(method, params)
    local answer = vim.lsp.buf_request_sync(buf, method, params or vim.lsp.util.make_position_params(0, client.offset_encoding), 20000)
    assert(answer and answer[id], method .. ': no answer')
    local err = answer[id].error or answer[id].err
    return err and { refused = err.message } or { result = answer[id].result }
  end
  local function set(old, new)
    local line, at = lineOf(old)
    return after(function() vim.api.nvim_buf_set_text(buf, line - 1, at, line - 1, at + #old, { new }) end)
  end

  waited('initialize', function() return client.initialized end)
  if published == 0 then waited('publishDiagnostics', function() return published > 0 end) end
  out.encoding = client.offset_encoding
  out.first = after(function() cursor('part hat'); vim.api.nvim_buf_set_lines(buf, 0, 0, true, { '# ñandú 🧶 á' }) end)

  -- A wrong count, behind letters that are not ASCII on the same line, and put right again.
  out.wrong = set('hdc in each = round_head', 'hdc in each = round_head + 3')
  out.right = set('hdc in each = round_head + 3', 'hdc in each = round_head')
  out.quote = set('es "Gorro"', 'es "Gorro 🧶 ñ" 5dc')
  out.quoteLine = vim.api.nvim_buf_get_lines(buf, lineOf('5dc') - 1, lineOf('5dc'), true)[1]
  set('es "Gorro 🧶 ñ" 5dc', 'es "Gorro"')

  cursor('dec] around', 0)
  out.hoverStitch = ask('textDocument/hover').result
  cursor('rounds for 14', 0)
  out.hoverRow = ask('textDocument/hover').result
  cursor('hdc in each = round_head', 17)
  out.hoverValue = ask('textDocument/hover').result

  vim.lsp.buf.definition()
  local line = lineOf('let round_head')
  waited('definition', function() return vim.api.nvim_win_get_cursor(0)[1] == line end)
  out.definition = vim.api.nvim_win_get_cursor(0)

  cursor('round_head', 2)
  vim.lsp.buf.rename('cabeza')
  waited('rename', function() return pcall(lineOf, 'let cabeza') end)
  out.renamed = vim.api.nvim_buf_get_lines(buf, 0, -1, true)
  out.refused = ask('textDocument/rename', vim.tbl_extend('force', (function()
    cursor('let cabeza', 5)
    return vim.lsp.util.make_position_params(0, client.offset_encoding)
  end)(), { newName = 'round' })).refused

  -- A new line in the part, completed as the editor does it.
  local at = lineOf('fasten off')
  vim.api.nvim_buf_set_lines(buf, at - 1, at - 1, true, { '  round: h' })
  vim.api.nvim_win_set_cursor(0, { at, 10 })
  vim.cmd('startinsert!')
  local params = vim.lsp.util.make_position_params(0, client.offset_encoding)
  params.position.character = 10
  local words = ask('textDocument/completion', params).result
  out.completed = vim.lsp.util.text_document_completion_list_to_complete_items(words, 'h')
  vim.api.nvim_buf_set_lines(buf, at - 1, at, true, {})

  out.symbols = ask('textDocument/documentSymbol', { textDocument = vim.lsp.util.make_text_document_params(buf) }).result
  out.hints = ask('textDocument/inlayHint', { textDocument = vim.lsp.util.make_text_document_params(buf),
    range = { start = { line = 0, character = 0 }, ['end'] = { line = 1000, character = 0 } } }).result

  vim.api.nvim_buf_set_lines(buf, -1, -1, true, { '', '', '' })
  local row = lineOf('fasten off')
  vim.api.nvim_buf_set_lines(buf, row - 1, row, true, { 'fasten   off' })
  vim.lsp.buf.formatting_sync({}, 20000)
  out.formatted = vim.api.nvim_buf_get_lines(buf, 0, -1, true)

  out.last = vim.api.nvim_buf_get_lines(buf, 0, -1, true)
  client.stop()
  waited('the end', function() return client.is_stopped() end)
end

vim.schedule(function()
  local ok, err = xpcall(session, debug.traceback)
  finish(not ok and err or nil)
end)
