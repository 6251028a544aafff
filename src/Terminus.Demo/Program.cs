using Terminus.Demo;

return new DemoConsole(Console.OpenStandardInput(), Console.OpenStandardOutput(), Console.Error).Run(args);
